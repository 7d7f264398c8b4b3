using Tendency.Inference.Functions;

namespace Tendency.Inference.Games;

/// <summary>Which of two options is at least as good, against a mix of two things.</summary>
public enum Better
{
    /// <summary>It depends on the mix.</summary>
    Depends = 0,

    /// <summary>The first, for every mix.</summary>
    First = 1,

    /// <summary>The second, for every mix.</summary>
    Second = 2,

    /// <summary>Both are equally good for every mix.</summary>
    Equal = 3,
}

/// <summary>The share of thing 1 (the rest is thing 2) at which two options are equally good.</summary>
/// <param name="Share">d2 / (d2 - d1) with d the first option's lead against each thing; null unless the leads have opposite signs.</param>
/// <param name="Better">Which option is better where there is no such share.</param>
/// <param name="FirstLeadsAbove">Where there is one: whether the first option is better above the share.</param>
public sealed record BreakEven(double? Share, Better Better, bool FirstLeadsAbove)
{
    /// <summary>
    /// Values of the first option against things 1 and 2, then of the second option, in one unit; larger is better. Solves
    /// p first1 + (1 - p) first2 = p second1 + (1 - p) second2 for p.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public static BreakEven Of(double first1, double first2, double second1, double second2)
    {
        Domain.Finite(first1);
        Domain.Finite(first2);
        Domain.Finite(second1);
        Domain.Finite(second2);
        double lead1 = first1 - second1, lead2 = first2 - second2;
        if (Math.Sign(lead1) * Math.Sign(lead2) < 0)
        {
            return new BreakEven(lead2 / (lead2 - lead1), Better.Depends, lead1 > 0);
        }

        var better = Math.Sign(lead1 + lead2) switch
        {
            > 0 => Better.First,
            < 0 => Better.Second,
            _ => Better.Equal,
        };
        return new BreakEven(null, better, false);
    }
}
