using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>How the offense mostly stands when it calls one run to one side of the back.</summary>
/// <param name="BackSide">The run against the back; null where he stands behind the quarterback or no side is charted.</param>
/// <param name="Set">gun, pistol, under; empty when not charted.</param>
internal sealed record CardLook(RunTo? BackSide, string Set)
{
    public bool WingToPlay { get; init; }

    public bool WingToBackside { get; init; }

    /// <summary>Two or more backs.</summary>
    public bool SecondBack { get; init; }

    /// <summary>The run goes to the right of the picture: the back is turned to the left.</summary>
    public bool PlayRight => BackSide != RunTo.ToBack;

    /// <summary>What most of the runs of a cell were run from, with the surface its ledger counts.</summary>
    /// <param name="side">The side the cell's runs went to; null where none is charted.</param>
    public static CardLook Of(PlayLog plays, RunSample sample, MixCell cell, RunTo? side)
    {
        var rows = sample.Runs
            .Where(run => run.Scheme == cell.Scheme && run.RunTo == side && run.Surface == cell.Surface && run.Tag == cell.Tag)
            .Select(run => run.Row).ToArray();
        var wings = plays.Category(ColumnNames.Wing);
        var sides = plays.Category(ColumnNames.RunSide);
        var people = plays.Category(ColumnNames.Personnel);
        bool Mostly(Func<int, bool> holds) => 2 * rows.Count(holds) > rows.Length;
        return new CardLook(side, Commonest(rows.Select(row => plays.Category(ColumnNames.BackSet)[row])))
        {
            WingToPlay = Mostly(row => wings[row] == "both" || (wings[row].Length == 1 && wings[row] == sides[row])),
            WingToBackside = Mostly(row => wings[row] == "both" || (wings[row] is "L" or "R" && wings[row] != sides[row])),
            SecondBack = Mostly(row => people[row] is { Length: 2 } word && word[0] is >= '2' and <= '9'),
        };
    }

    private static string Commonest(IEnumerable<string> words) =>
        words.Where(word => word.Length > 0).GroupBy(word => word, StringComparer.Ordinal).MaxBy(group => group.Count())?.Key ?? "";
}
