using Tendency.Inference.Agreement;
using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Information;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;
using Tendency.Inference.Shrinkage;

namespace Tendency.Inference.Tests.Refusals;

/// <summary>Functions of lists and tables: missing, of the wrong length, or with a value that is none.</summary>
internal static class ListRefusals
{
    private const double NaN = double.NaN;
    private const double Inf = double.PositiveInfinity;
    private static readonly CountTable s_table = new(2, 2, [3, 4, 5, 6]);
    private static readonly GroupCount[] s_groups = [new(3, 5), new(2, 6)];

    public static IEnumerable<Refusal> All() =>
    [
        Refusal.Of("OneMean.Student", "values", "one", () => OneMean.Student([1], .9)),
        Refusal.Of("OneMean.Student", "values", "NaN", () => OneMean.Student([1, NaN], .9)),
        Refusal.Of("OneMean.Student", "values", "null", () => OneMean.Student(null!, .9)),
        .. Refusal.Numbers("OneMean.Student", "level", [.9], v => OneMean.Student([1, 2], v[0])),
        .. Counts("Simultaneous.Goodman", (counts, level) => Simultaneous.Goodman(counts, level)),
        .. Counts("Simultaneous.QuesenberryHurst", (counts, level) => Simultaneous.QuesenberryHurst(counts, level)),
        Refusal.Of("Simultaneous.SisonGlaz", "counts", "-1", () => Simultaneous.SisonGlaz([3, -1], .9)),
        Refusal.Of("Simultaneous.SisonGlaz", "counts", "2^32", () => Simultaneous.SisonGlaz([int.MaxValue, int.MaxValue], .9)),
        Refusal.Of("Simultaneous.SisonGlaz", "counts", "null", () => Simultaneous.SisonGlaz(null!, .9)),
        .. Refusal.Numbers("Simultaneous.SisonGlaz", "level", [.9], v => Simultaneous.SisonGlaz([3, 4], v[0])),
        .. Counts("DirichletPosterior.new", (counts, level) => new DirichletPosterior(counts)).Where(row => row.Argument == "counts"),
        Refusal.Of("DirichletPosterior.new", "prior", "0", () => new DirichletPosterior([3, 4], 0)),
        Refusal.Of("DirichletPosterior.new", "prior", "too few", () => new DirichletPosterior([3, 4], [1])),
        Refusal.Of("DirichletPosterior.new", "prior", "NaN", () => new DirichletPosterior([3, 4], [1, NaN])),
        Refusal.Of("DirichletPosterior.Mean", "j", "2 of 2", () => new DirichletPosterior([3, 4]).Mean(2)),
        Refusal.Of("DirichletPosterior.Marginal", "j", "-1", () => new DirichletPosterior([3, 4]).Marginal(-1, .9)),
        .. Refusal.Numbers("DirichletPosterior.Marginal", "level", [.9], v => new DirichletPosterior([3, 4]).Marginal(0, v[0])),
        new Refusal("Interval.Contains", "value", "NaN", () => new Interval(0, 1).Contains(NaN), MayAnswer: true),

        Refusal.Of("CountTable.new", "rowMajor", "-1", () => new CountTable(1, 2, [3, -1])),
        Refusal.Of("CountTable.new", "rowMajor", "too few", () => new CountTable(2, 2, [3, 1])),
        Refusal.Of("CountTable.new", "rowMajor", "sum 2^32", () => new CountTable(1, 2, [int.MaxValue, int.MaxValue])),
        Refusal.Of("CountTable.new", "rowMajor", "null", () => new CountTable(1, 2, null!)),
        Refusal.Of("CountTable.new", "rows", "null", () => new CountTable(null!)),
        Refusal.Of("CountTable.new", "rows", "ragged", () => new CountTable([[1, 2], [3], [4, 5, 6]])),
        Refusal.Of("CountTable.new", "column", "2 of 2", () => s_table[0, 2]),
        Refusal.Of("FisherTest.Run", "b", "-1", () => FisherTest.Run(1, -1, 2, 3)),
        Refusal.Of("FisherTest.Run", "a", "2^31", () => FisherTest.Run(int.MaxValue, 1, 2, 3)),
        .. Refusal.Numbers("FisherTest.OddsRatioInterval", "level", [.9], v => FisherTest.Run(3, 1, 2, 3).OddsRatioInterval(v[0])),
        Refusal.Of("FreemanHaltonTest.P", "table", "null", () => FreemanHaltonTest.P(null!)),
        Refusal.Of("HomogeneityTest.Run", "table", "null", () => HomogeneityTest.Run(null!)),
        Refusal.Of("HomogeneityTest.PermutationP", "draws", "0", () => HomogeneityTest.PermutationP(s_table, 0, 1)),
        Refusal.Of("StratifiedTest.Run", "hits", "too few", () => StratifiedTest.Run([1], [2, 2], [3, 3], [4, 4])),
        Refusal.Of("StratifiedTest.Run", "hits", "3 of 2", () => StratifiedTest.Run([3], [2], [3], [4])),
        Refusal.Of("StratifiedTest.Run", "total", "-1", () => StratifiedTest.Run([0], [0], [0], [-1])),
        Refusal.Of("StratifiedTest.Run", "total", "2^31", () => StratifiedTest.Run([0], [1], [1], [int.MaxValue])),
        Refusal.Of("ConditionalScore.new", "stratum", "2 of 2", () => new ConditionalScore([true], [2], 2)),
        Refusal.Of("ConditionalScore.new", "strata", "-1", () => new ConditionalScore([], [], -1)),
        Refusal.Of("ConditionalScore.Add", "trials", "1 of 1", () => { new ConditionalScore([true], [0], 1).Add([1]); return null; }),
        Refusal.Of("ConditionalScore.Z", "trials", "-1", () => new ConditionalScore([true], [0], 1).Z([-1])),

        .. PValues(),
        Refusal.Of("MaxT.Run", "stratum", "too few", () => MaxT.Run([true, false], [0], [[0]], 9, 1)),
        Refusal.Of("MaxT.Run", "cells", "2 of 2", () => MaxT.Run([true, false], [0, 0], [[2]], 9, 1)),
        Refusal.Of("MaxT.Run", "cells", "null", () => MaxT.Run([true, false], [0, 0], [null!], 9, 1)),
        Refusal.Of("MaxT.Run", "draws", "0", () => MaxT.Run([true, false], [0, 0], [[0]], 0, 1)),

        Refusal.Of("Entropy.Bits", "counts", "-1", () => Entropy.Bits([3, -1])),
        Refusal.Of("Entropy.Bits", "counts", "null", () => Entropy.Bits(null!)),
        Refusal.Of("Entropy.MillerMadow", "counts", "-1", () => Entropy.MillerMadow([3, -1])),
        Refusal.Of("MutualInformation.OfTable", "table", "null", () => MutualInformation.OfTable(null!)),

        Refusal.Of("BackOff.Share", "hits", "no level", () => BackOff.Share([], [], [])),
        Refusal.Of("BackOff.Share", "hits", "infinite", () => BackOff.Share([Inf], [Inf], [])),
        Refusal.Of("BackOff.Share", "trials", "NaN", () => BackOff.Share([1], [NaN], [])),
        Refusal.Of("BackOff.Share", "hits", "9 in 3", () => BackOff.Share([3, 9], [50, 10], [12])),
        Refusal.Of("BackOff.Share", "strength", "0", () => BackOff.Share([9, 3], [50, 10], [0])),
        Refusal.Of("BackOff.Share", "strength", "NaN", () => BackOff.Share([9, 3], [50, 10], [NaN])),
        Refusal.Of("BackOff.Mix", "counts", "no category", () => BackOff.Mix([[]], [])),
        Refusal.Of("BackOff.Mix", "counts", "ragged", () => BackOff.Mix([[3, 4], [1]], [12])),
        Refusal.Of("BackOff.Mix", "counts", "NaN", () => BackOff.Mix([[3, NaN]], [])),
        Refusal.Of("BackOff.Mix", "strength", "-1", () => BackOff.Mix([[3, 4], [1, 1]], [-1])),
        .. Refusal.Numbers("BackOffShare.Interval", "level", [.9], v => BackOff.Share([9, 3], [50, 10], [Inf]).Interval(v[0])),
        Refusal.Of("DirichletMultinomial.Fit", "rows", "none", () => DirichletMultinomial.Fit([])),
        Refusal.Of("DirichletMultinomial.Fit", "rows", "ragged", () => DirichletMultinomial.Fit([[3, 4], [1]])),
        Refusal.Of("DirichletMultinomial.Fit", "rows", "empty", () => DirichletMultinomial.Fit([[0, 0]])),
        Refusal.Of("DirichletMultinomial.Fit", "rows", "2^32", () => DirichletMultinomial.Fit([[int.MaxValue, int.MaxValue]])),
        Refusal.Of("DirichletMultinomial.FitShares", "hits", "too few", () => DirichletMultinomial.FitShares([1], [2, 3])),
        Refusal.Of("DirichletMultinomial.FitShares", "hits", "3 of 2", () => DirichletMultinomial.FitShares([3], [2])),
        Refusal.Of("DirichletMultinomialFit.Alpha", "k", "2 of 2", () => DirichletMultinomial.Fit([[3, 4]]).Alpha(2)),
        Refusal.Of("PriorStrength.OfSiblings", "rows", "-1", () => PriorStrength.OfSiblings([[3, -1]])),

        Refusal.Of("EffectiveSize.Kish", "weight", "-1", () => EffectiveSize.Kish([1, -1])),
        Refusal.Of("EffectiveSize.Kish", "weight", "infinite", () => EffectiveSize.Kish([1, Inf])),
        Refusal.Of("EffectiveSize.OfGroups", "size", "NaN", () => EffectiveSize.OfGroups([1, NaN], .1)),
        Refusal.Of("EffectiveSize.OfGroups", "rho", "NaN", () => EffectiveSize.OfGroups([1, 2], NaN)),
        Refusal.Of("EffectiveSize.OfWeightedGroups", "weight", "NaN", () => EffectiveSize.OfWeightedGroups([(3, NaN)], .1)),
        Refusal.Of("EffectiveSize.Of", "group", "too few", () => EffectiveSize.Of([1, 2], [0], .1)),
        Refusal.Of("EffectiveSize.Of", "rho", "NaN", () => EffectiveSize.Of([1, 2], [0, 1], NaN)),
        Refusal.Of("GroupBootstrap.Exact", "groups", "none", () => GroupBootstrap.Exact([])),
        Refusal.Of("GroupBootstrap.Exact", "groups", "thirteen", () => GroupBootstrap.Exact(Enumerable.Repeat(s_groups[0], 13))),
        Refusal.Of("GroupBootstrap.Simulate", "draws", "0", () => GroupBootstrap.Simulate(s_groups, 0, 1)),
        .. Refusal.Numbers("ResampleDistribution.Quantile", "level", [.9], v => GroupBootstrap.Exact(s_groups).Quantile(v[0])).Where(row => row.Value is not ("0" or "1")),
        Refusal.Of("GroupedShare.new", "groups", "null", () => new GroupedShare(null!)),
        Refusal.Of("GroupedShare.EffectiveTrials", "rho", "NaN", () => new GroupedShare(s_groups).EffectiveTrials(NaN)),
        Refusal.Of("GroupedShare.DesignEffect", "rho", "NaN", () => new GroupedShare(s_groups).DesignEffect(NaN)),
        .. Refusal.Numbers("GroupedShare.Interval", "rho level", [.1, .9], v => new GroupedShare(s_groups).Interval(v[0], v[1])),
        .. Refusal.Numbers("GroupedShare.KornGraubard", "level", [.9], v => new GroupedShare(s_groups).KornGraubard(v[0])),
        Refusal.Of("EffectiveSize.OfCells", "groups", "null", () => EffectiveSize.OfCells(null!, .1, .1)),
        Refusal.Of("EffectiveSize.OfCells", "size", "NaN", () => EffectiveSize.OfCells([([1, NaN], 1)], .1, .1)),
        Refusal.Of("EffectiveSize.OfCells", "weight", "NaN", () => EffectiveSize.OfCells([([1, 2], NaN)], .1, .1)),
        Refusal.Of("EffectiveSize.OfCells", "inCell", "NaN", () => EffectiveSize.OfCells([([1, 2], 1)], NaN, .1)),
        Refusal.Of("EffectiveSize.OfCells", "acrossCells", "NaN", () => EffectiveSize.OfCells([([1, 2], 1)], .1, NaN)),
        Refusal.Of("WithinGroupCorrelation.AcrossCells", "tables", "null", () => WithinGroupCorrelation.AcrossCells(null!)),
        Refusal.Of("WithinGroupCorrelation.AcrossCells", "tables", "cells of different groups", () => WithinGroupCorrelation.AcrossCells([[[new(1, 2), new(1, 2)], [new(1, 2)]]])),
        Refusal.Of("WithinGroupCorrelation.OfOneCell", "groups", "null", () => WithinGroupCorrelation.OfOneCell(null!)),
        Refusal.Of("WithinGroupCorrelation.Pooled", "cells", "null", () => WithinGroupCorrelation.Pooled(null!)),
        Refusal.Of("ChangePoint.Find", "groups", "null", () => ChangePoint.Find(null!)),
        Refusal.Of("ChangePoint.PermutationP", "groups", "null", () => ChangePoint.PermutationP(null!)),
        Refusal.Of("Drift.Homogeneity", "groups", "null", () => Drift.Homogeneity(null!)),
        .. new[] { NaN, 1, -.1 }.Select(rho => Refusal.Of("Drift.Bootstrap", "rho", $"{rho}", () => Drift.Bootstrap(s_table, rho, 9, 1))),
        Refusal.Of("Drift.Bootstrap", "draws", "0", () => Drift.Bootstrap(s_table, .1, 0, 1)),

        Refusal.Of("Kappa.Of", "table", "not square", () => Kappa.Of(new CountTable(1, 2, [3, 4]))),
        Refusal.Of("Kappa.Of", "table", "empty", () => Kappa.Of(new CountTable(2, 2, [0, 0, 0, 0]))),
        Refusal.Of("Kappa.Of", "weights", "unknown", () => Kappa.Of(s_table, (AgreementWeights)9)),
        Refusal.Of("Kappa.Of", "weights", "NaN", () => Kappa.Of(s_table, new[,] { { 1, NaN }, { 0, 1 } })),
        Refusal.Of("Kappa.Of", "weights", "2", () => Kappa.Of(s_table, new double[,] { { 1, 2 }, { 0, 1 } })),
        .. Refusal.Numbers("Kappa.Interval", "level", [.9], v => Kappa.Of(s_table).Interval(v[0])),
        .. Refusal.Numbers("Kappa.RawAgreement", "level", [.9], v => Kappa.Of(s_table).RawAgreement(v[0])),
        Refusal.Of("KrippendorffAlpha.Of", "ratings", "none", () => KrippendorffAlpha.Of([], ValueMetric.Nominal)),
        Refusal.Of("KrippendorffAlpha.Of", "ratings", "infinite", () => KrippendorffAlpha.Of([[1, Inf], [1, 2]], ValueMetric.Interval)),
        Refusal.Of("KrippendorffAlpha.Of", "ratings", "-1", () => KrippendorffAlpha.Of([[1, -1], [1, 2]], ValueMetric.Ratio)),
        Refusal.Of("KrippendorffAlpha.Of", "metric", "unknown", () => KrippendorffAlpha.Of([[1, 1], [1, 1]], (ValueMetric)9)),
        Refusal.Of("KrippendorffAlpha.JackknifeError", "ratings", "ragged", () => KrippendorffAlpha.JackknifeError([[1, 2], [1]], ValueMetric.Nominal)),
        Refusal.Of("KrippendorffAlpha.Bootstrap", "block", "too few", () => KrippendorffAlpha.Bootstrap([[1, 2], [1, 1]], [0], ValueMetric.Nominal, .9, 9, 1)),
        Refusal.Of("KrippendorffAlpha.Bootstrap", "draws", "0", () => KrippendorffAlpha.Bootstrap([[1, 2], [1, 1]], [0, 1], ValueMetric.Nominal, .9, 0, 1)),
        .. Refusal.Numbers("KrippendorffAlpha.Bootstrap", "level", [.9], v => KrippendorffAlpha.Bootstrap([[1, 2], [1, 1]], [0, 1], ValueMetric.Nominal, v[0], 9, 1)),
        Refusal.Of("RankCorrelation.KendallTauB", "y", "too few", () => RankCorrelation.KendallTauB([1, 2], [1])),
        Refusal.Of("RankCorrelation.KendallTauB", "x", "NaN", () => RankCorrelation.KendallTauB([1, NaN], [1, 2])),
        Refusal.Of("RankCorrelation.Spearman", "y", "NaN", () => RankCorrelation.Spearman([1, 2], [1, NaN])),
    ];

    private static IEnumerable<Refusal> Counts(string member, Func<IReadOnlyList<double>, double, object?> call) =>
    [
        .. new[] { NaN, Inf, -1 }.Select(bad => Refusal.Of(member, "counts", $"{bad}", () => call([3, bad], .9))),
        Refusal.Of(member, "counts", "null", () => call(null!, .9)),
        .. Refusal.Numbers(member, "level", [.9], v => call([3, 4], v[0])),
    ];

    private static IEnumerable<Refusal> PValues() =>
        new (string Name, Func<IReadOnlyList<double>, object?> Call)[]
        {
            ("BenjaminiHochberg", AdjustedP.BenjaminiHochberg), ("BenjaminiYekutieli", AdjustedP.BenjaminiYekutieli), ("Bonferroni", AdjustedP.Bonferroni),
            ("Holm", AdjustedP.Holm), ("Hochberg", AdjustedP.Hochberg), ("StoreyQ", p => AdjustedP.StoreyQ(p)), ("NullShare", p => AdjustedP.NullShare(p)),
        }.SelectMany(adjusted => new[] { NaN, Inf, -.1, 1.1 }
            .Select(bad => Refusal.Of("AdjustedP." + adjusted.Name, "p", $"{bad}", () => adjusted.Call([.2, bad])))
            .Append(Refusal.Of("AdjustedP." + adjusted.Name, "p", "null", () => adjusted.Call(null!))));
}
