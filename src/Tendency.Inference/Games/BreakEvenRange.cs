using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Games;

/// <summary>
/// How sure a break-even share (a fraction) is, from joint draws. Source: posterior simulation, Gelman and others, Bayesian Data Analysis,
/// 3rd ed., sec. 10.1 [from memory].
/// </summary>
/// <param name="Chance">Share of draws in which the two options turn in the direction asked for.</param>
/// <param name="Range">Equal-tailed range of the break-even share in those draws; null where there is none.</param>
public sealed record BreakEvenRange(double Chance, Interval? Range)
{
    /// <param name="values">Draws of the options against the two parts of the mix; larger is better.</param>
    /// <param name="first">Index of the first option.</param>
    /// <param name="second">Index of the second option.</param>
    /// <param name="firstLeadsAbove">The direction: whether the first option is the better one above the share.</param>
    /// <param name="level">Of the range, in (0, 1).</param>
    /// <exception cref="ArgumentException">No draw, no such option, or a level outside.</exception>
    public static BreakEvenRange Of(SplitValues values, int first, int second, bool firstLeadsAbove, double level)
    {
        ArgumentNullException.ThrowIfNull(values);
        Domain.Position(first, values.Inside.Count);
        Domain.Position(second, values.Inside.Count);
        Domain.Level(level);
        var draws = values.Inside[first].Length;
        if (draws == 0)
        {
            throw new ArgumentException("A range needs at least one draw.", nameof(values));
        }

        var shares = new List<double>(draws);
        for (var d = 0; d < draws; d++)
        {
            var turn = BreakEven.Of(values.Inside[first][d], values.Outside[first][d], values.Inside[second][d], values.Outside[second][d]);
            if (turn.Share is { } share && turn.FirstLeadsAbove == firstLeadsAbove)
            {
                shares.Add(share);
            }
        }

        shares.Sort();
        return new BreakEvenRange((double)shares.Count / draws, shares.Count == 0 ? null : new Interval(
            shares[(int)Math.Floor((1 - level) / 2 * (shares.Count - 1))],
            shares[(int)Math.Ceiling((1 + level) / 2 * (shares.Count - 1))]));
    }
}
