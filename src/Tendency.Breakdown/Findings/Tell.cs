using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Situations;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Findings;

/// <summary>A situation in which the subject does one thing more, or less, often than usual.</summary>
/// <remarks>All shares and differences are fractions. Counts are plain, never weighted.</remarks>
public sealed record Tell
{
    /// <summary>1 for the tell whose expected share lies farthest from the base rate, the way its count does.</summary>
    public required int Rank { get; init; }

    /// <summary>One to three conditions, all of which hold.</summary>
    public required IReadOnlyList<TellCondition> Conditions { get; init; }

    /// <summary>What they do there: a value of the outcome column.</summary>
    public required string Outcome { get; init; }

    /// <summary>Plays of the situation with the outcome column charted.</summary>
    public required int Plays { get; init; }

    public required int Count { get; init; }

    /// <summary>Wilson's interval of <see cref="Share"/>.</summary>
    public required Interval Range { get; init; }

    /// <summary>Share of the outcome among all plays, the situation's included.</summary>
    public required double BaseShare { get; init; }

    /// <summary>Newcombe's interval, situation against the rest, scaled by 1 - n/N to a difference from the base rate.</summary>
    public required Interval DifferenceRange { get; init; }

    /// <summary>Exact, two-sided, calls exchanged only within a game.</summary>
    public required double PValue { get; init; }

    /// <summary>Benjamini and Hochberg's, over every situation and outcome looked at, weighted as <see cref="Tells.Search"/> says.</summary>
    public required double QValue { get; init; }

    /// <summary>Share expected next time: leans on the situations this one is part of.</summary>
    public required double ShrunkShare { get; init; }

    /// <summary>Difference from the base rate after allowing for having been picked because it is large.</summary>
    public required double CorrectedDifference { get; init; }

    /// <summary>
    /// Share of charts with calls shuffled within games that show any tell this strong anywhere (Westfall and Young 1993); null where the
    /// search was too large to shuffle.
    /// </summary>
    public double? ShuffledP { get; init; }

    /// <summary>Whether it still shows among plays of the same down and distance; null when the situation leaves nothing to compare there.</summary>
    public required bool? HoldsWithinDownAndDistance { get; init; }

    /// <summary>Counts in every game that has plays of the situation, in order of games.</summary>
    public required IReadOnlyList<TellGame> ByGame { get; init; }

    /// <summary>What they do otherwise, where there is only one otherwise: one condition whose column has just two values; else null.</summary>
    public TellOtherHalf? Otherwise { get; init; }

    /// <summary>The shallower situation that shows most of it, for two conditions and more: what there is to see without the last one.</summary>
    public TellParent? Parent { get; init; }

    /// <summary>Rows of the situation in the play log that was searched.</summary>
    public required IReadOnlyList<int> Rows { get; init; }

    /// <summary>The same plays as <c>game:play</c>.</summary>
    public required IReadOnlyList<string> PlaysList { get; init; }

    /// <summary><c>name=value</c> joined by <c> &amp; </c>.</summary>
    public string Situation => string.Join(" & ", Conditions.Select(c => $"{c.Name}={c.Value}"));

    public double Share => (double)Count / Plays;

    public double Difference => Share - BaseShare;

    /// <summary>How far the share expected next time lies from the base rate: what tells are ranked by.</summary>
    public double ExpectedDifference => ShrunkShare - BaseShare;

    public int Games => ByGame.Count;

    /// <summary>Games in which the situation lies on the same side of that game's own share.</summary>
    public int GamesSameWay => ByGame.Count(g => Difference > 0 ? g.Share > g.GameShare : g.Share < g.GameShare);

    /// <summary>Plays of the situation in the games without which the search had found it too, and the count among them.</summary>
    public int HeldOutPlays => ByGame.Where(g => g.FoundWithoutIt).Sum(g => g.Plays);

    public int HeldOutCount => ByGame.Where(g => g.FoundWithoutIt).Sum(g => g.Count);

    /// <summary>Whether it was tried on enough plays of games it was not found in for a rate: 1 of 1 proves nothing.</summary>
    public bool WasTried => HeldOutPlays >= Estimate.FewestPlays;

    /// <summary>Whether, tried on games it was not found in, it was on the same side of the base rate.</summary>
    public bool HeldUp => WasTried && Math.Sign(((double)HeldOutCount / HeldOutPlays) - BaseShare) == Math.Sign(Difference);
}

/// <summary>One condition: a column or dimension and the value it has.</summary>
public readonly record struct TellCondition(string Name, string Value)
{
    /// <summary>Rows of a play log, any with these columns, on which all of some conditions hold.</summary>
    public static int[] RowsOf(IEnumerable<TellCondition> conditions, PlayLog plays)
    {
        var holds = conditions.Select(c => new Condition(c.Name, [c.Value]).Rows(plays)).ToArray();
        return [.. Enumerable.Range(0, plays.Rows).Where(row => Array.TrueForAll(holds, h => h[row]))];
    }
}

/// <summary>A tell within one game.</summary>
/// <param name="Plays">Plays of the situation; at least 1.</param>
/// <param name="Count">Those with the outcome.</param>
/// <param name="GameShare">Share of the outcome among all plays of the game.</param>
/// <param name="FoundWithoutIt">Whether the other games alone show the tell.</param>
public readonly record struct TellGame(string Game, int Plays, int Count, double GameShare, bool FoundWithoutIt)
{
    public double Share => (double)Count / Plays;
}

/// <summary>A situation that a tell is part of, with the tell's outcome counted in all of it.</summary>
public sealed record TellParent(IReadOnlyList<TellCondition> Conditions, int Plays, int Count)
{
    public double Share => (double)Count / Plays;
}

/// <summary>The other half of a tell that splits the plays in two, told by what they do more often than usual there.</summary>
/// <param name="Condition">The same column with its other value.</param>
/// <param name="Outcome">The other outcome of two; of more, the tell's own.</param>
/// <param name="Plays">Plays with that value; at least 1.</param>
/// <param name="Count">Those with the outcome.</param>
public readonly record struct TellOtherHalf(TellCondition Condition, string Outcome, int Plays, int Count)
{
    public double Share => (double)Count / Plays;
}
