using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What do they open a game with? Scripted plays are cut apart because they are drawn up to show something.</summary>
internal static class OpenersPage
{
    private const int MostGames = 5;
    private const int MostSnaps = 10;

    public static Page? Compose(Study study)
    {
        var openers = study.Plays.Where(ColumnNames.Opener, "yes");
        var rest = study.Plays.Where(ColumnNames.Opener, "no");
        if (openers.Rows == 0 || rest.Rows == 0)
        {
            return null;
        }

        var count = study.Week.Boundaries.OpenerPlays;
        Situation[] rows =
        [
            Situation.Total(study.Plays),
            new("Openers", $"first {count} snaps", openers) { Spoken = $"on their first {count} snaps of a game" },
            new("After them", "", rest) { Spoken = "once the openers are done" },
            .. Downs(openers),
        ];
        return new Page("openers", "Openers", CallFinding.Of(study, rows, CallFinding.None(study, openers, $"on their first {count} snaps")))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                CallTable.Of(study, "Situation", rows),
                new Heading("How each game began", $"the first {Words.Number(MostSnaps)} snaps{(study.Games.Count > MostGames ? $" of the last {Words.Number(MostGames)} games" : "")}: down and distance, call, gain"),
                Script(study),
            ],
        };
    }

    private static IEnumerable<Situation> Downs(PlayLog openers) => new[] { ("1", "1st down", "first"), ("2", "2nd down", "second"), ("3", "3rd down", "third") }
        .Select(down => new Situation($"{down.Item2}", "openers", openers.Where(ColumnNames.Down, down.Item1)) { Spoken = $"on {down.Item3} down among the openers" })
        .Prepend(Situation.Group("Openers, by down", openers));

    private static Table Script(Study study)
    {
        var games = study.Games.TakeLast(MostGames).ToArray();
        var width = (516d - 20) / games.Length;
        var scripts = games.Select(game => InOrder(study.Plays.Where(ColumnNames.Game, game).Where(ColumnNames.Opener, "yes"))).ToArray();
        var columns = games.Select((game, i) => new Column($"{study.ShortGames[game]} {game}", 20 + (i * width), width - 6)).Prepend(new Column("", 0, 16, Align.Right));
        var rows = Enumerable.Range(0, Math.Min(MostSnaps, scripts.Max(script => script.Rows)))
            .Select(snap => new TableRow([Cells.Count(snap + 1), .. scripts.Select(script => snap < script.Rows ? Snap(script, snap) : Cells.Blank)]));
        return new Table([.. columns], [.. rows]) { Caption = "Opening snaps by game" };
    }

    private static Cell Snap(PlayLog script, int row)
    {
        var gain = script.Number(ColumnNames.Gain)[row] is int yards ? $", {Figures.Signed(yards, 0)}" : "";
        return Cells.Text(SnapTable.CallOf(script, row), $"{SnapTable.DownOf(script, row)}{gain}");
    }

    private static PlayLog InOrder(PlayLog plays)
    {
        var numbers = plays.Number(ColumnNames.Play);
        return plays.Take([.. Enumerable.Range(0, plays.Rows).OrderBy(row => numbers[row])]);
    }
}
