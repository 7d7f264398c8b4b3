using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Comparisons;

public sealed class TwoProportionReferenceTests
{
    [Fact]
    public void Difference_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_two_proportion"))
        {
            var (x1, n1, x2, n2, level) = Counts(row);
            Check(row, "newcombe", Difference.Newcombe(x1, n1, x2, n2, level), 1e-12);
            Check(row, "ac", Difference.AgrestiCaffo(x1, n1, x2, n2, level), 1e-12);
            Check(row, "mn", Difference.MiettinenNurminen(x1, n1, x2, n2, level), 1e-9);
            Check(row, "mee", Difference.Mee(x1, n1, x2, n2, level), 1e-9);
        }
    }

    [Fact]
    public void Ratio_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_two_proportion"))
        {
            var (x1, n1, x2, n2, level) = Counts(row);
            CheckRelative(row, "rr_mn", Ratio.MiettinenNurminen(x1, n1, x2, n2, level), 1e-8);
            CheckRelative(row, "rr_koopman", Ratio.Koopman(x1, n1, x2, n2, level), 1e-8);
            CheckRelative(row, "rr_katz", Ratio.Katz(x1, n1, x2, n2, level), 1e-12);
        }
    }

    [Fact]
    public void Tests_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_two_proportion"))
        {
            int x1 = row.Integer("x1"), n1 = row.Integer("n1"), x2 = row.Integer("x2"), n2 = row.Integer("n2");
            var fisher = FisherTest.Run(x1, n1 - x1, x2, n2 - x2);
            row.Relative("fisher_two", fisher.TwoSided, 1e-9, 1e-15);
            row.Relative("fisher_less", fisher.Less, 1e-9, 1e-15);
            row.Relative("fisher_greater", fisher.Greater, 1e-9, 1e-15);
            row.Relative("midp_two", fisher.MidTwoSided, 1e-9, 1e-15);
            row.Relative("midp_dbl", fisher.MidDoubled, 1e-9, 1e-15);
            var test = HomogeneityTest.Run(new CountTable(2, 2, [x1, n1 - x1, x2, n2 - x2]));
            row.Relative("pearson_x2", test.PearsonX2, 1e-12, 1e-13);
            row.Relative("pearson_p", test.PearsonP, 1e-10);
            row.Relative("g", test.G, 1e-12, 1e-13);
            row.Relative("g_p", test.P, 1e-10);
            double n = n1 + n2;
            row.Relative("nminus1_p", test.Freedom == 0 ? 1 : ChiSquared.Upper(1, test.PearsonX2 * (n - 1) / n), 1e-10);
        }
    }

    [Fact]
    public void Fisher_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_fisher_2x2"))
        {
            var fisher = FisherTest.Run(row.Integer("a"), row.Integer("b"), row.Integer("c"), row.Integer("d"));
            row.Relative("two", fisher.TwoSided, 1e-9, 1e-15);
            row.Relative("less", fisher.Less, 1e-9, 1e-15);
            row.Relative("greater", fisher.Greater, 1e-9, 1e-15);
            row.Relative("pobs", fisher.Observed, 1e-9, 1e-15);
            row.Relative("midp_two", fisher.MidTwoSided, 1e-9, 1e-15);
            row.Relative("midp_less", fisher.MidLess, 1e-9, 1e-15);
            row.Relative("midp_greater", fisher.MidGreater, 1e-9, 1e-15);
            row.Relative("midp_dbl", fisher.MidDoubled, 1e-9, 1e-15);
            row.Relative("or_cmle", fisher.OddsRatio() ?? double.NaN, 1e-7);
            var odds = fisher.OddsRatioInterval(0.95);
            row.Relative("or_lo95", odds.Low, 1e-7);
            row.Relative("or_hi95", odds.High, 1e-7);
        }
    }

    private static (double X1, double N1, double X2, double N2, double Level) Counts(GridRow row) =>
        (row.Number("x1"), row.Number("n1"), row.Number("x2"), row.Number("n2"), row.Number("level"));

    private static void Check(GridRow row, string method, Interval actual, double tolerance)
    {
        row.Absolute(method + "_lo", actual.Low, tolerance);
        row.Absolute(method + "_hi", actual.High, tolerance);
    }

    private static void CheckRelative(GridRow row, string method, Interval? actual, double tolerance)
    {
        row.Relative(method + "_lo", actual?.Low ?? double.NaN, tolerance);
        row.Relative(method + "_hi", actual?.High ?? double.NaN, tolerance);
    }
}
