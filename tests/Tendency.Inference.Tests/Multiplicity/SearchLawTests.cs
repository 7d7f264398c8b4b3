using CsCheck;
using Tendency.Inference.Multiplicity;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Multiplicity;

public sealed class SearchLawTests
{
    private static readonly Gen<(bool Hit, int Stratum, bool First, bool Second)[]> Plays =
        Gen.Select(Gen.Bool, Gen.Int[0, 2], Gen.Bool, Gen.Bool).Array[1, 14];

    [Fact]
    public void MaxT_HitsAndMissesExchanged_ChangesNothingAndOrdersItsPs() => Law.Holds(
        Plays,
        60,
        plays =>
        {
            var result = Run(plays, play => play.Hit);
            var turned = Run(plays, play => !play.Hit);
            for (var i = 0; i < 3; i++)
            {
                Assert.Equal(result.Statistics[i], turned.Statistics[i], 1e-9);
                Assert.Equal(result.SingleStep[i], turned.SingleStep[i], 1e-12);
                Assert.True(result.RawP[i] <= result.StepDown[i] + 1e-12 && result.StepDown[i] <= result.SingleStep[i] + 1e-12);
            }

            // A cell and the plays outside it are the same comparison.
            Assert.Equal(result.RawP[0], result.RawP[2], 1e-12);
        });

    [Fact]
    public void ConditionalMean_LargerStatistic_LargerMeanAndNeverBeyondIt() => Law.Holds(
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[0.01, 4], Gen.Double[0.01, 2]),
        200,
        (threshold, beyond, more) =>
        {
            var near = SelectionCorrection.ConditionalMean(threshold + beyond, threshold);
            var far = SelectionCorrection.ConditionalMean(threshold + beyond + more, threshold);
            Assert.InRange(near, 0, threshold + beyond);
            Assert.True(near < far);
            Assert.True(SelectionCorrection.ConditionalMean(threshold + beyond, threshold / 2) >= near - 1e-9);
        });

    [Fact]
    public void HochbergAndStorey_AnyList_LieWhereTheyBelong() => Law.Holds(
        Gen.Double[0, 1].Array[1, 40],
        200,
        p =>
        {
            var (bh, holm, hochberg, storey, careful) =
                (AdjustedP.BenjaminiHochberg(p), AdjustedP.Holm(p), AdjustedP.Hochberg(p), AdjustedP.StoreyQ(p), AdjustedP.StoreyQ(p, plusOne: true));
            var share = AdjustedP.NullShare(p);
            Assert.InRange(share, 0, AdjustedP.NullShare(p, plusOne: true));
            for (var i = 0; i < p.Length; i++)
            {
                Assert.True(bh[i] <= hochberg[i] + 1e-12 && hochberg[i] <= holm[i] + 1e-12);
                Assert.True(storey[i] <= careful[i] + 1e-12 && careful[i] <= bh[i] + 1e-12);
                Assert.Equal(share * bh[i], storey[i], bh[i] < 1 ? 1e-12 : 1);
            }
        });

    private static MaxTResult Run((bool Hit, int Stratum, bool First, bool Second)[] plays, Func<(bool Hit, int Stratum, bool First, bool Second), bool> label) => MaxT.Run(
        [.. plays.Select(label)],
        [.. plays.Select(play => play.Stratum)],
        [Where(plays, play => play.First), Where(plays, play => play.Second), Where(plays, play => !play.First)],
        5_000,
        1);

    private static int[] Where((bool Hit, int Stratum, bool First, bool Second)[] plays, Func<(bool Hit, int Stratum, bool First, bool Second), bool> inside) =>
        [.. Enumerable.Range(0, plays.Length).Where(i => inside(plays[i]))];
}
