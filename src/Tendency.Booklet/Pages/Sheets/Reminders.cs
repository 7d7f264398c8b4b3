using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>The one or two things to remember in a situation: which way runs and slides go when that is sure, and the run of theirs that our front stops least.</summary>
internal static class Reminders
{
    private const int Most = 2;
    private const int FewestRuns = 3;
    private const int LongestScheme = 14;

    /// <param name="study">Gives the level.</param>
    /// <param name="plays">The plays of the situation.</param>
    /// <param name="front">Our front there; null = none named.</param>
    public static IReadOnlyList<string> Of(Study study, PlayLog plays, string? front)
    {
        var ways = new[]
        {
            Way(study, plays, ColumnNames.RunTo, "Runs"),
            Way(study, plays, ColumnNames.SlideTo, "Slide"),
        };
        var sure = ways.OfType<(string Words, double Lean)>().OrderByDescending(way => way.Lean).Select(way => way.Words);
        return [.. sure.Concat(front is null ? [] : Hurts(study, plays, front)).Take(Most)];
    }

    private static (string Words, double Lean)? Way(Study study, PlayLog plays, string column, string what)
    {
        var sided = plays.Where(column, "to back", "away");
        var away = study.Of(sided, column, "away", .5);
        var lean = Math.Abs(study.Expected(column, "away", study.Plays.Where(column, "to back", "away"), sided) - .5);
        return away.Lean() switch
        {
            Lean.Above => ($"{what} away from back {away.Count}/{away.Plays}", lean),
            Lean.Below => ($"{what} to back {away.Plays - away.Count}/{away.Plays}", lean),
            _ => null,
        };
    }

    /// <summary>"Mind counter GT away (5)".</summary>
    private static IEnumerable<string> Hurts(Study study, PlayLog plays, string front)
    {
        var runs = CrossTab.Count(plays.Where(ColumnNames.Call, "run"), [ColumnNames.RunScheme], ColumnNames.RunTo)
            .ToDictionary(row => (row.By[0], row.Outcome), row => row.Tally.Count);
        return study.Fronts!.Matrix.Cells.SelectMany(row => row)
            .Where(cell => cell.Front == front && runs.GetValueOrDefault((cell.RunScheme, cell.Side.Word())) >= FewestRuns)
            .OrderByDescending(cell => cell.SuccessAllowed)
            .Take(1)
            .Select(cell => $"Mind {Short.Cut(Words.Plain(cell.RunScheme), LongestScheme)} {cell.Side.Word()} ({Figures.Count(runs[(cell.RunScheme, cell.Side.Word())])})");
    }
}
