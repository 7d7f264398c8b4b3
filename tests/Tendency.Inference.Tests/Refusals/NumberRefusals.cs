using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;
using Tendency.Inference.Games;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;

namespace Tendency.Inference.Tests.Refusals;

/// <summary>Functions of plain numbers: every argument in turn takes every value that is none.</summary>
internal static class NumberRefusals
{
    public static IEnumerable<Refusal> All() =>
    [
        .. Refusal.Numbers("BetaDistribution.Lower", "a b x", [2, 3, .4], v => BetaDistribution.Lower(v[0], v[1], v[2])),
        .. Refusal.Numbers("BetaDistribution.Upper", "a b x", [2, 3, .4], v => BetaDistribution.Upper(v[0], v[1], v[2])),
        .. Refusal.Numbers("BetaDistribution.Density", "a b x", [2, 3, .4], v => BetaDistribution.Density(v[0], v[1], v[2])),
        .. Refusal.Numbers("BetaDistribution.Quantile", "a b p", [2, 3, .4], v => BetaDistribution.Quantile(v[0], v[1], v[2])),
        .. Refusal.Numbers("BetaDistribution.QuantileComplement", "a b p", [2, 3, .4], v => BetaDistribution.QuantileComplement(v[0], v[1], v[2])),
        .. Refusal.Numbers("ChiSquared.Lower", "df x", [2, 3], v => ChiSquared.Lower(v[0], v[1])),
        .. Refusal.Numbers("ChiSquared.Upper", "df x", [2, 3], v => ChiSquared.Upper(v[0], v[1])),
        .. Refusal.Numbers("ChiSquared.UpperQuantile", "df p", [2, .3], v => ChiSquared.UpperQuantile(v[0], v[1])),
        .. Refusal.Numbers("IncompleteGamma.Lower", "a x", [2, 3], v => IncompleteGamma.Lower(v[0], v[1])),
        .. Refusal.Numbers("IncompleteGamma.Upper", "a x", [2, 3], v => IncompleteGamma.Upper(v[0], v[1])),
        .. Refusal.Numbers("GammaFunction.Log", "x", [2], v => GammaFunction.Log(v[0])),
        .. Refusal.Numbers("GammaFunction.Digamma", "x", [2], v => GammaFunction.Digamma(v[0])),
        .. Refusal.Numbers("GammaFunction.Trigamma", "x", [2], v => GammaFunction.Trigamma(v[0])),
        Refusal.Of("GammaFunction.LogFactorial", "n", "-1", () => GammaFunction.LogFactorial(-1)),
        Refusal.Of("GammaFunction.LogChoose", "k", "-1", () => GammaFunction.LogChoose(5, -1)),
        Refusal.Of("GammaFunction.LogChoose", "k", "6 of 5", () => GammaFunction.LogChoose(5, 6)),
        .. Refusal.Numbers("NormalDistribution.Density", "z", [2], v => NormalDistribution.Density(v[0])),
        .. Refusal.Numbers("NormalDistribution.Lower", "z", [2], v => NormalDistribution.Lower(v[0])),
        .. Refusal.Numbers("NormalDistribution.Upper", "z", [2], v => NormalDistribution.Upper(v[0])),
        .. Refusal.Numbers("NormalDistribution.Quantile", "p", [.2], v => NormalDistribution.Quantile(v[0])),
        .. Refusal.Numbers("NormalDistribution.CriticalValue", "level", [.2], v => NormalDistribution.CriticalValue(v[0])),
        .. Refusal.Numbers("StudentT.Quantile", "df p", [4, .2], v => StudentT.Quantile(v[0], v[1])),
        .. Refusal.Numbers("StudentT.Upper", "df t", [4, .2], v => StudentT.Upper(v[0], v[1])),

        .. Refusal.Numbers("OneProportion.Wilson", "x n level", [2, 5, .9], v => OneProportion.Wilson(v[0], v[1], v[2])),
        .. Refusal.Numbers("OneProportion.WilsonContinuity", "x n level", [2, 5, .9], v => OneProportion.WilsonContinuity(v[0], v[1], v[2])),
        .. Refusal.Numbers("OneProportion.Jeffreys", "x n level", [2, 5, .9], v => OneProportion.Jeffreys(v[0], v[1], v[2])),
        .. Refusal.Numbers("OneProportion.JeffreysRaw", "x n level", [2, 5, .9], v => OneProportion.JeffreysRaw(v[0], v[1], v[2])),
        .. Refusal.Numbers("OneProportion.ClopperPearson", "x n level", [2, 5, .9], v => OneProportion.ClopperPearson(v[0], v[1], v[2])),
        .. Refusal.Numbers("OneProportion.AgrestiCoull", "x n level", [2, 5, .9], v => OneProportion.AgrestiCoull(v[0], v[1], v[2])),
        .. Refusal.Numbers("OneProportion.MidP", "level", [.9], v => OneProportion.MidP(2, 5, v[0])),
        Refusal.Of("OneProportion.MidP", "x", "6 of 5", () => OneProportion.MidP(6, 5, .9)),
        Refusal.Of("OneProportion.MidP", "n", "-1", () => OneProportion.MidP(0, -1, .9)),
        Refusal.Of("OneProportion.Wilson", "x", "6 of 5", () => OneProportion.Wilson(6, 5, .9)),
        Refusal.Of("OneProportion.Wilson", "n", "1e16", () => OneProportion.Wilson(6, 1e16, .9)),
        Refusal.Of("BetaDistribution.Quantile", "b", "1e300", () => BetaDistribution.Quantile(2, 1e300, .4)),
        Refusal.Of("ChiSquared.Upper", "df", "1e-300", () => ChiSquared.Upper(1e-300, 1e100)),
        .. Refusal.Numbers("Interval.new", "low high", [0, 1], v => new Interval(v[0], v[1])).Where(r => r.Value == "NaN").Select(r => r with { Argument = "low" }),
        Refusal.Of("Interval.new", "low", "2 above 1", () => new Interval(2, 1)),

        .. Refusal.Numbers("Difference.Newcombe", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Difference.Newcombe(v[0], v[1], v[2], v[3], v[4])),
        .. Refusal.Numbers("Difference.MiettinenNurminen", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Difference.MiettinenNurminen(v[0], v[1], v[2], v[3], v[4])),
        .. Refusal.Numbers("Difference.Mee", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Difference.Mee(v[0], v[1], v[2], v[3], v[4])),
        .. Refusal.Numbers("Difference.AgrestiCaffo", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Difference.AgrestiCaffo(v[0], v[1], v[2], v[3], v[4])),
        Refusal.Of("Difference.MiettinenNurminen", "n2", "0", () => Difference.MiettinenNurminen(2, 5, 0, 0, .9)),
        .. Refusal.Numbers("Ratio.MiettinenNurminen", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Ratio.MiettinenNurminen(v[0], v[1], v[2], v[3], v[4])),
        .. Refusal.Numbers("Ratio.Koopman", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Ratio.Koopman(v[0], v[1], v[2], v[3], v[4])),
        .. Refusal.Numbers("Ratio.Katz", "x1 n1 x2 n2 level", [2, 5, 3, 7, .9], v => Ratio.Katz(v[0], v[1], v[2], v[3], v[4])),
        Refusal.Of("Ratio.Katz", "n1", "0", () => Ratio.Katz(0, 0, 1, 2, .9)),
        .. Refusal.Numbers("SelectionCorrection.ConditionalMean", "z threshold", [3, 2], v => SelectionCorrection.ConditionalMean(v[0], v[1])),
        .. Refusal.Numbers("EffectiveSize.RecencyWeight", "age halfLife", [3, 4], v => EffectiveSize.RecencyWeight(v[0], v[1])),
        .. Refusal.Numbers("GroupCount.new", "hits trials", [3, 4], v => new GroupCount(v[0], v[1])),
        .. Refusal.Numbers("BreakEven.Of", "first1 first2 second1 second2", [.4, .6, .5, .5], v => BreakEven.Of(v[0], v[1], v[2], v[3])),
    ];
}
