namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>One front against their passes as a whole: what its rush is expected to change. Coverage has the rest, so film of passes does not count.</summary>
/// <param name="Rush">Expert rating of its pass rush, -2 to 2, both sides' mean.</param>
/// <param name="SuccessAllowed">Pass base - rush step x rush, kept inside 0.02 to 0.98.</param>
public sealed record PassCell(string Front, double Rush, double SuccessAllowed)
{
    private const double MostPlays = 100_000;

    /// <summary>Parameters of a Beta whose standard deviation is one rating point: one point either way is within honest disagreement.</summary>
    internal (double Alpha, double Beta) Weights { get; init; }

    public static PassCell Of(Front front, RunSample sample, FrontOptions options)
    {
        var allowed = FrontMatrix.Prior(sample.PassBase.Share, front.Rush, options.RushStep);
        var plays = Math.Clamp((allowed * (1 - allowed) / (options.RushStep * options.RushStep)) - 1, options.PriorPlays, MostPlays);
        return new PassCell(front.Name, front.Rush, allowed) { Weights = (plays * allowed, plays * (1 - allowed)) };
    }
}
