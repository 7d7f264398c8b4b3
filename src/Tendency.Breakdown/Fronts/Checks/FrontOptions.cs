using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>What a staff can set about the front check.</summary>
public sealed record FrontOptions
{
    /// <summary>Plays of film an expert rating is worth; positive.</summary>
    public double PriorPlays { get; init; } = 8;

    /// <summary>Change of run success a rating point stands for.</summary>
    public double RatingStep { get; init; } = 0.06;

    /// <summary>Change of pass success a point of a front's rush stands for: half a run point, coverage has the rest. Our choice, no source.</summary>
    public double RushStep { get; init; } = 0.03;

    /// <summary>Plays the even spread over their seen schemes is worth in the mix; positive.</summary>
    public double MixPriorPlays { get; init; } = 1;

    /// <summary>How much each game counts in their mix of runs, and of runs and passes. What a front gave up on film counts plain: it is the same front.</summary>
    public GameWeights Weights { get; init; } = GameWeights.Equal;

    /// <summary>Level of every interval, in (0, 1).</summary>
    public double Level { get; init; } = 0.95;

    /// <summary>Joint draws of mix and success for the probability of being best.</summary>
    public int Draws { get; init; } = 100_000;

    /// <summary>Draws for each line of the front card, where the last digit is not printed.</summary>
    public int CardDraws { get; init; } = 2_000;

    public int Seed { get; init; } = 1;

    /// <summary>Less than this a rating can not be worth: a cell without film would be anything between never and always.</summary>
    private const double LeastPriorPlays = 0.5;

    public static FrontOptions From(WeekPlan week) => new()
    {
        PriorPlays = Math.Max(LeastPriorPlays, week.PriorPlays),
        RatingStep = week.RatingStep,
        RushStep = week.RushStep,
        Level = week.Level,
    };
}
