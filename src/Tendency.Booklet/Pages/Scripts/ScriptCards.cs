using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Counts.Scripts;

namespace Tendency.Booklet.Pages.Scripts;

/// <summary>A practice script to print: the running order for the coach, then a card a snap for the scout team.</summary>
public static class ScriptCards
{
    private const int Columns = 2;

    public static ScoutingBooklet Compose(Study study, PracticeScript script, DateTimeOffset dated)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(script);
        Page[] pages = script.Snaps.Count == 0 ? [Empty(study, script)] : [Running(study, script), Cards(script)];
        return new ScoutingBooklet(study.Opponent, study.Side, $"{study.Opponent} {study.Side}, practice script", Footprint.Of(study), [new Section("Practice script", pages)], dated)
        {
            Contents = false,
            Kind = "Practice script",
            LikelyMeans = "",
        };
    }

    private static Page Empty(Study study, PracticeScript script)
    {
        var needs = script.Period.Needs;
        return new Page("running-order", "Practice script", $"{script.Period.Title}: no play to draw from.")
        {
            Blocks = [new EmptyState($"The charts hold no play for this period. It is drawn by {needs}, filled on {Figures.CountOf(study.Plays.Dimension(needs).ChartedCount, study.Plays.Rows)} plays.")],
        };
    }

    private static Page Running(Study study, PracticeScript script)
    {
        var calls = CrossTab.Values(script.Plays, ColumnNames.Call).Select(call => (call.Value, Count: script.Snaps.Count(snap => snap.Call == call.Value))).Where(call => call.Count > 0);
        var again = script.Snaps.Count > script.Plays.Rows ? " There are fewer plays than snaps, so plays come up again." : "";
        return new Page("running-order", "Practice script", $"{script.Period.Title}: {Words.Join(calls.Select(call => Words.Figured(call.Count, Noun(call.Value), Many(call.Value))))}, as they call them.")
        {
            Deck = $"{Words.Figured(script.Snaps.Count, "snap")} out of {Words.Figured(script.Plays.Rows, "play")}, in their proportions by call, then scheme or concept, then formation. Each is a real play: run it, then show it.{again}",
            Blocks =
            [
                new Paragraph(RichText.Strong(PracticeScript.Caution), TextStyle.Note),
                RunningOrder(script),
                new Heading("How the script keeps their mix", $"snaps of {script.Snaps.Count}, and plays of {Figures.Count(script.Plays.Rows)} charted"),
                new SideBySide([.. Mixes(script)]),
            ],
        };
    }

    private static Table RunningOrder(PracticeScript script)
    {
        Column[] columns =
        [
            new("", 0, 16, Align.Right), new("Situation", 24, 130), new("Formation", 158, 80), new("Back", 242, 40), new("Motion", 286, 44), new("Call", 334, 94), new("Show", 432, 84),
        ];
        return new Table(columns, [.. script.Snaps.Select(snap => new TableRow(
            Cells.Text(Figures.Count(snap.Order)),
            Cells.Text(Down(snap) + (snap.Spot.Length == 0 ? "" : $", {snap.Spot}")),
            Cells.Text(Words.Title(snap.Formation)),
            Cells.Text(Back(snap.BackSide)),
            Cells.Text(snap.Motion),
            Cells.Text(RichText.Strong(Called(snap))),
            Cells.Text($"{snap.Game} {Figures.Count(snap.Play)}")))])
        { Caption = "Running order" };
    }

    private static IEnumerable<Side> Mixes(PracticeScript script)
    {
        const int Most = 6;
        foreach (var (head, column, calls, of) in new (string, string, string[], Func<ScriptSnap, string>)[]
        {
            ("Formation", ColumnNames.Formation, ["run", "pass", "rpo"], snap => snap.Formation),
            ("Back", ColumnNames.BackSide, ["run", "pass", "rpo"], snap => snap.BackSide),
            ("Run", ColumnNames.RunScheme, ["run", "rpo"], snap => snap.Detail),
            ("Pass", ColumnNames.PassConcept, ["pass"], snap => snap.Detail),
        })
        {
            var values = CrossTab.Values(script.Plays.Where(ColumnNames.Call, calls), column);
            var snaps = script.Snaps.Where(snap => calls.Contains(snap.Call)).ToLookup(of, StringComparer.Ordinal);
            if (values.Count > 0)
            {
                yield return new Side(120, [new Table(
                    [new Column(head, 0, 66), new Column("Snaps", 66, 28, Align.Right), new Column("Plays", 96, 24, Align.Right)],
                    [.. values.Take(Most).Select(value => new TableRow(
                        Cells.Text(column == ColumnNames.BackSide ? Words.Capital(Back(value.Value)) : Words.Title(value.Value)),
                        Cells.Text(Figures.Count(snaps[value.Value].Count())),
                        Cells.Text(Figures.Count(value.Count))))]) { Bare = true, RowHeight = 12 }]);
            }
        }
    }

    private static Page Cards(PracticeScript script) => new("cards", "Practice script cards", $"{script.Period.Title}: the cards, seen from behind the offense.")
    {
        Deck = "Gray circle: the back. Dotted: the ball's way on a run, by charted side and gap. Spacing is schematic.",
        Blocks = [new SmallMultiples([.. script.Snaps.Select(snap => Card(script.Plays, snap))], Columns)],
    };

    private static Panel Card(PlayLog plays, ScriptSnap snap)
    {
        var body = new List<Block>();
        if (ScriptPicture.Of(plays, snap.Row) is { } picture)
        {
            body.Add(picture);
        }

        string[] look = [Words.Title(snap.Formation), Sided("strength", plays.Category(ColumnNames.Strength)[snap.Row]), Set(plays, snap), snap.Motion.Length == 0 ? "" : $"{snap.Motion} motion"];
        var way = snap.Call == "pass" ? "" : plays.Category(ColumnNames.RunSide)[snap.Row] switch { "L" => " left", "R" => " right", _ => "" };
        var option = snap.Call != "rpo" && plays.Category(ColumnNames.Called)[snap.Row] == "rpo" ? " (run-pass option)" : "";
        body.Add(Paragraph.Call(RichText.Strong(Called(snap) + way) + option));
        body.Add(new Paragraph(string.Join(", ", look.Where(part => part.Length > 0)), TextStyle.Deck));
        body.Add(Paragraph.Note($"Show {snap.Game} {Figures.Count(snap.Play)}{(snap.Clip.Length == 0 ? "" : $", clip {snap.Clip}")}"));
        return new Panel($"{Figures.Count(snap.Order)}.  {Down(snap)}", snap.Spot, body);
    }

    private static string Set(PlayLog plays, ScriptSnap snap)
    {
        var set = plays.Category(ColumnNames.BackSet)[snap.Row] switch { "under" => "under center", "empty" => "", var word => word };
        return string.Join(", ", ((string[])[set, snap.BackSide switch { "" => "", "none" => "no back", "middle" => "back behind", var side => $"back {side}" }]).Where(part => part.Length > 0));
    }

    private static string Sided(string what, string side) => side switch { "L" => $"{what} left", "R" => $"{what} right", _ => "" };

    private static string Down(ScriptSnap snap) => snap.DownDistance.Length == 0 ? "" : snap.DownDistance[0] switch
    {
        '1' => "1st" + snap.DownDistance[1..],
        '2' => "2nd" + snap.DownDistance[1..],
        '3' => "3rd" + snap.DownDistance[1..],
        '4' => "4th" + snap.DownDistance[1..],
        _ => snap.DownDistance,
    };

    private static string Back(string side) => side switch { "none" => "no back", "middle" => "behind", _ => side };

    private static string Called(ScriptSnap snap) => snap.Detail.Length == 0 ? Words.Capital(Noun(snap.Call)) : Words.Title(snap.Detail);

    private static string Noun(string call) => call == "rpo" ? "run-pass option" : call;

    private static string Many(string call) => call == "pass" ? "passes" : Noun(call) + "s";
}
