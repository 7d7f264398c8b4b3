using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Situations;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>The back of the sideline sheet: run or pass by formation, their runs and passes, the tells that hold.</summary>
internal static class SheetBack
{
    private const int MostFormations = 9;
    private const int MostCalls = 10;
    private const int MostTells = 9;

    /// <returns>Null when neither formations nor calls are charted.</returns>
    public static Page? Of(Study study)
    {
        var sides = new List<Side>();
        Add(sides, 318, Formations(study));
        Add(sides, 170, [.. Mix(study, "Runs", "run", ColumnNames.RunScheme), .. Mix(study, "Passes", "pass", ColumnNames.PassConcept)]);
        if (sides.Count == 0)
        {
            return null;
        }

        Add(sides, 0, [.. TellsOf(study, bare: true)]);
        return new Page("sideline-sheet-back", "Sideline sheet, back", $"{study.Side}, looks and calls")
        {
            Kind = PageKind.Sheet,
            Blocks = [new SideBySide(sides) { Gutter = 16 }],
        };
    }

    private static void Add(List<Side> sides, double width, IReadOnlyList<Block> blocks)
    {
        if (blocks.Count > 0)
        {
            sides.Add(new Side(width, blocks));
        }
    }

    private static List<Block> Formations(Study study)
    {
        var formations = CrossTab.Values(study.Plays, ColumnNames.Formation);
        var kept = formations.Where(formation => formation.Count >= Share.FewestPlays).Take(MostFormations).ToArray();
        if (kept.Length == 0)
        {
            return [];
        }

        var backs = CallCells.Backs(study);
        var columns = new List<Column> { new("", 0, 64), new("All", 66, 62, Align.Center) };
        columns.AddRange(backs.Select((back, i) => new Column(back.Head, 66 + (63 * (i + 1)), 62, Align.Center)));
        var rest = formations.Except(kept).ToArray();
        var blocks = new List<Block>
        {
            new Heading("Formation", "run or pass, by where the back stands") { Bare = true },
            new Table(columns, [.. kept.Select(formation => new TableRow(
                [Cells.Name(Words.Title(formation.Value)), .. CallCells.Of(study, new Condition(ColumnNames.Formation, [formation.Value]), backs)]))]) { RowHeight = 27, Bare = true, Caption = "Run or pass by formation" },
        };
        blocks.Add(Paragraph.Note(ByLuck(study, kept.Select(formation => new Condition(ColumnNames.Formation, [formation.Value])), backs)));
        if (rest.Length > 0)
        {
            blocks.Add(Paragraph.Note($"Others: {Words.Join(rest.Take(5).Select(formation => $"{Words.Plain(formation.Value)} {formation.Count}"))}{(rest.Length > 5 ? $", {rest.Length - 5} more" : "")}."));
        }

        return blocks;
    }

    /// <summary>How many cells of both sides would look sure were every one of them even: what a sheet of many cells owes its reader.</summary>
    private static string ByLuck(Study study, IEnumerable<Condition> formations, IReadOnlyList<(string Value, string Head)> backs)
    {
        var tested = formations.Concat(SheetSituation.Of(study).Select(situation => new Condition(situation.Column, situation.Values)))
            .SelectMany(situation => CallCells.Of(study, situation, backs)).Count(cell => cell.Tone != CallTone.TooFew);
        var lucky = (int)Math.Ceiling(tested * (1 - study.Level));
        return $"{Words.Figured(tested, "cell")} on both sides hold {Share.FewestPlays} plays or more; were all of them even, about {Words.Number(lucky)} would look sure by luck.";
    }

    private static IEnumerable<Block> Mix(Study study, string title, string call, string column)
    {
        var plays = study.Plays.Where(ColumnNames.Call, call);
        var mix = Counting.Mix.Of(study, plays, column, MostCalls);
        if (mix.Plays < Share.FewestPlays)
        {
            yield break;
        }

        var full = mix.Parts.Max(part => part.Share.Value ?? 0) * 1.15;
        yield return new Heading(title, $"{Figures.Count(mix.Plays)} charted{Way(study, call)}") { Bare = call == "run" };
        yield return new Table(
            [new Column("", 0, 78), new Column("", 80, 60), new Column("", 142, 28, Align.Right)],
            [.. mix.Parts.Select(part => new TableRow(Cells.Text(Words.Title(part.Value)), Cells.Bar(part.Share.Value ?? 0, full: full), Cells.Text(Figures.Count(part.Share.Count))))])
        { Bare = true, RowHeight = 14, Caption = $"{title} by share" };
    }

    private static string Way(Study study, string call)
    {
        var away = study.Of(study.Plays.Where(ColumnNames.RunTo, "to back", "away"), ColumnNames.RunTo, "away", .5);
        return call == "run" && away.Plays >= Share.FewestPlays ? $"; away from back {away.Count}/{away.Plays}" : "";
    }

    internal static IEnumerable<Block> TellsOf(Study study, bool bare)
    {
        if (study.Tells.Count == 0)
        {
            yield break;
        }

        var held = study.Tells.SelectMany(report => report.Tells.Where(tell => tell.HeldUp && tell.Difference > 0 && tell.Outcome != "rpo").Select(tell => (Tell: tell, report.OutcomeColumn)))
            .OrderByDescending(tell => tell.Tell.ExpectedDifference).Take(MostTells).ToArray();
        yield return new Heading("Tells that hold", held.Length == 0 ? "" : "count, likely; held out") { Bare = bare };
        if (held.Length == 0)
        {
            yield return new Paragraph(study.Games.Count < 2
                ? RichText.Strong("One game.") + " There is no other to try a tell on."
                : RichText.Strong("No tell holds.") + " Nothing they show gives the call away on games left out.");
            yield break;
        }

        yield return new Table(
            [new Column("", 0, 128), new Column("", 130, 70, Align.Right)],
            [.. held.Select(found => new TableRow(
                Cells.Text(SituationWords.Of(found.Tell.Conditions), RichText.Strong($"{Words.Plain(SituationWords.Outcome(found.OutcomeColumn, found.Tell.Outcome))}, expect {Figures.Percent(found.Tell.ShrunkShare)}")),
                Cells.Text($"{found.Tell.Count}/{found.Tell.Plays}, {Figures.Range(study.Of(study.Plays.Take([.. found.Tell.Rows]), found.OutcomeColumn, found.Tell.Outcome))}", $"out {found.Tell.HeldOutCount}/{found.Tell.HeldOutPlays}")))])
        { Caption = "Tells that hold" };
    }
}
