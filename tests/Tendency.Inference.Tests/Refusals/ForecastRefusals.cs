using Tendency.Inference.Forecasts;
using Tendency.Inference.Games;
using Tendency.Inference.Scores;

namespace Tendency.Inference.Tests.Refusals;

/// <summary>Scores, forecasts and games.</summary>
internal static class ForecastRefusals
{
    private const double NaN = double.NaN;
    private const double Inf = double.PositiveInfinity;
    private static readonly UncertainOption s_option = new([4, 5], [6, 5]);
    private static readonly RateTables s_tables = new([s_option, s_option]);
    private static readonly SplitValues s_values = SplitDraws.Simulate(s_tables, [3, 2], [[true, false]], true, 9, 1)[0];

    public static IEnumerable<Refusal> All() =>
    [
        .. Forecasts("BinaryScores.Of", (hit, p) => BinaryScores.Of(hit, p)),
        .. Forecasts("CalibrationLine.Of", (hit, p) => CalibrationLine.Of(hit, p)),
        .. Forecasts("CalibrationTable.Of", (hit, p) => CalibrationTable.Of(hit, p, 5, .9)),
        Refusal.Of("CalibrationTable.Of", "bins", "0", () => CalibrationTable.Of([true], [.4], 0, .9)),
        .. Refusal.Numbers("CalibrationTable.Of", "level", [.9], v => CalibrationTable.Of([true], [.4], 5, v[0])),
        Refusal.Of("CategoryScores.Of", "forecast", "none", () => CategoryScores.Of([], [])),
        Refusal.Of("CategoryScores.Of", "forecast", "NaN", () => CategoryScores.Of([0], [[NaN, 1]])),
        Refusal.Of("CategoryScores.Of", "forecast", "sum 2", () => CategoryScores.Of([0], [[1, 1]])),
        Refusal.Of("CategoryScores.Of", "forecast", "call 2 of 2", () => CategoryScores.Of([2], [[.5, .5]])),
        Refusal.Of("CategoryScores.Of", "forecast", "null", () => CategoryScores.Of([0], [null!])),
        Refusal.Of("MeanOfGroups.StudentInterval", "values", "infinite", () => MeanOfGroups.StudentInterval([1, Inf], .9)),
        .. Refusal.Numbers("MeanOfGroups.StudentInterval", "level", [.9], v => MeanOfGroups.StudentInterval([1, 2], v[0])),

        Refusal.Of("BaggedTrees.Fit", "features", "none", () => BaggedTrees.Fit([], [], 3, 1)),
        Refusal.Of("BaggedTrees.Fit", "features", "no column", () => BaggedTrees.Fit([[]], [true], 3, 1)),
        Refusal.Of("BaggedTrees.Fit", "features", "ragged", () => BaggedTrees.Fit([[1, 2], [1]], [true, false], 3, 1)),
        Refusal.Of("BaggedTrees.Fit", "features", "NaN", () => BaggedTrees.Fit([[NaN]], [true], 3, 1)),
        Refusal.Of("BaggedTrees.Fit", "trees", "0", () => BaggedTrees.Fit([[1]], [true], 0, 1)),
        Refusal.Of("BaggedTrees.Probability", "features", "two of one", () => BaggedTrees.Fit([[1]], [true], 3, 1).Probability([1, 2])),
        Refusal.Of("PenalizedLogistic.Fit", "features", "ragged", () => PenalizedLogistic.Fit([[1, 2], [1]], [true, false], [0, 0], [1, 1])),
        Refusal.Of("PenalizedLogistic.Fit", "features", "infinite", () => PenalizedLogistic.Fit([[Inf]], [true], [0], [1])),
        Refusal.Of("PenalizedLogistic.Fit", "hit", "null", () => PenalizedLogistic.Fit([[1]], null!, [0], [1])),
        Refusal.Of("PenalizedLogistic.Fit", "expected", "NaN", () => PenalizedLogistic.Fit([[1]], [true], [NaN], [1])),
        Refusal.Of("PenalizedLogistic.Fit", "precision", "0", () => PenalizedLogistic.Fit([[1]], [true], [0], [0])),
        Refusal.Of("PenalizedLogistic.Probability", "features", "two of one", () => PenalizedLogistic.Fit([[1]], [true], [0], [1]).Probability([1, 2])),

        .. Shapes("UncertainOption.new", "a", bad => new UncertainOption([4, bad], [6, 5])),
        .. Shapes("UncertainOption.new", "b", bad => new UncertainOption([4, 5], [6, bad])),
        Refusal.Of("UncertainOption.new", "a", "nothing", () => new UncertainOption([], [])),
        Refusal.Of("UncertainOption.new", "a", "two to one", () => new UncertainOption([4, 5], [6])),
        Refusal.Of("UncertainOption.Mean", "s", "2 of 2", () => s_option.Mean(2)),
        .. Shapes("UncertainOption.Against", "mixWeights", bad => s_option.Against([3, bad])),
        Refusal.Of("UncertainOption.Against", "mixWeights", "too few", () => s_option.Against([3])),
        Refusal.Of("RateTables.new", "options", "two things and one", () => new RateTables([s_option, new UncertainOption([4], [6])])),
        Refusal.Of("RateTables.With", "shapes", "too few", () => s_tables.With([(3, 4)])),
        .. Shapes("RateTables.With", "shapes", bad => s_tables.With([(3, 4), (3, bad)])),
        .. Shapes("OptionRanking.Simulate", "mixWeights", bad => OptionRanking.Simulate(s_tables, [3, bad], .8, 9, 1)),
        Refusal.Of("OptionRanking.Simulate", "mixWeights", "too many", () => OptionRanking.Simulate([s_option], [3, 4, 5], .8, 9, 1)),
        .. Refusal.Numbers("OptionRanking.Simulate", "rangeLevel", [.8], v => OptionRanking.Simulate(s_tables, [3, 4], v[0], 9, 1)),
        Refusal.Of("OptionRanking.Simulate", "draws", "0", () => OptionRanking.Simulate(s_tables, [3, 4], .8, 0, 1)),
        .. Shapes("SplitDraws.Simulate", "mixWeights", bad => SplitDraws.Simulate(s_tables, [3, bad], [[true, false]], true, 9, 1)),
        Refusal.Of("SplitDraws.Simulate", "splits", "too few", () => SplitDraws.Simulate(s_tables, [3, 4], [[true]], true, 9, 1)),
        Refusal.Of("SplitDraws.Simulate", "draws", "0", () => SplitDraws.Simulate(s_tables, [3, 4], [[true, false]], true, 0, 1)),
        Refusal.Of("BreakEvenRange.Of", "first", "2 of 2", () => BreakEvenRange.Of(s_values, 2, 0, true, .9)),
        Refusal.Of("BreakEvenRange.Of", "second", "-1", () => BreakEvenRange.Of(s_values, 0, -1, true, .9)),
        Refusal.Of("BreakEvenRange.Of", "values", "no draw", () => BreakEvenRange.Of(new SplitValues([[], []], [[], []]), 0, 1, true, .9)),
        .. Refusal.Numbers("BreakEvenRange.Of", "level", [.9], v => BreakEvenRange.Of(s_values, 0, 1, true, v[0])),
        .. new[] { NaN, Inf, 0 }.Select(bad => Refusal.Of("BestOfBetas.Chances", "shapes", $"{bad}", () => BestOfBetas.Chances([(1, bad)]))),
        .. new[] { NaN, Inf, 1e101 }.Select(bad => Refusal.Of("MatrixGame.Solve", "payoff", $"{bad}", () => MatrixGame.Solve(new[,] { { 1, bad }, { 2, 0 } }))),
        Refusal.Of("MatrixGame.Solve", "payoff", "no column", () => MatrixGame.Solve(new double[2, 0])),
    ];

    private static IEnumerable<Refusal> Forecasts(string member, Func<bool[], double[], object?> call) =>
    [
        .. new[] { NaN, Inf, -.1, 1.1 }.Select(bad => Refusal.Of(member, "forecast", $"{bad}", () => call([true, false], [.3, bad]))),
        Refusal.Of(member, "forecast", "none", () => call([], [])),
        Refusal.Of(member, "forecast", "too few", () => call([true, false], [.3])),
        Refusal.Of(member, "hit", "null", () => call(null!, [.3])),
    ];

    // Beyond 1e9 a table of rates would have no width left to step through, below 1e-6 it would never end.
    private static IEnumerable<Refusal> Shapes(string member, string argument, Func<double, object?> call) =>
        new[] { NaN, Inf, 0, -1, 1e10, 1e-17 }.Select(bad => Refusal.Of(member, argument, $"{bad}", () => call(bad)));
}
