using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>Who leaves his place in a run and where he arrives: facts of the trade (common practice, no source).</summary>
public class BlockerMoveTests
{
    public static TheoryData<string> Schemes => [.. FrontBook.BuiltIn.Schemes.Select(scheme => scheme.Name)];

    [Theory]
    [MemberData(nameof(Schemes))]
    public void Schemes_NameAsManyPullersAsTheyCount(string name)
    {
        var scheme = FrontBook.BuiltIn.Scheme(name)!;
        Assert.Equal(scheme.Pullers, scheme.Pulls.Count);
        Assert.Equal(scheme.FromBack, scheme.Pulls.Count(pull => !pull.IsNear));
        Assert.All(scheme.Pulls, pull => Assert.Contains(pull.Man, scheme.Puller + " guards", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("power", 1, "guard Back wraps to C inside the puller; wing Play kicks out to C between the puller and the kick-out")]
    [InlineData("power", 0, "guard Back wraps to C inside the puller")]
    [InlineData("counter gt", 0, "guard Back kicks out to C between the wrap and the kick-out; tackle Back wraps to C inside the wrap")]
    [InlineData("counter gh", 0, "guard Back kicks out to C between the wrap and the kick-out; wing Back wraps to C inside the wrap")]
    [InlineData("qb counter", 0, "guard Back kicks out to C between the lead back and the kick-out; tackle Back wraps to C inside the wrap; back Play leads to C between the wrap and the lead back")]
    [InlineData("trap", 0, "guard Back kicks out to A inside the puller")]
    [InlineData("dart", 0, "tackle Back wraps to B inside the puller")]
    [InlineData("down g", 0, "guard Play kicks out to C")]
    [InlineData("split zone", 0, "wing Play slices to C inside the slice")]
    [InlineData("iso", 0, "fullback Play leads to B inside the lead")]
    [InlineData("inside zone", 1, "")]
    public void Moves_StandardRun_WhoGoesWhere(string scheme, int offBall, string expected)
    {
        var ledger = GapLedger.Of(FrontBook.BuiltIn.Fronts[0], FrontBook.BuiltIn.Scheme(scheme)!, new Surface { AttachedPlay = 1, OffBall = offBall });
        var said = ledger.Moves.Select(move => $"{move.Who} {move.From} {move.Job} to {ledger.Fits.Where(fit => fit.Flank == move.To).ElementAt(move.Gap).Gap}");
        Assert.Equal(expected, string.Join("; ", said));
    }

    [Fact]
    public void Fits_TwoPullersLeaveOneGap_LinemenKeepTheirOrder()
    {
        var ledger = GapLedger.Of(FrontBook.BuiltIn.Front("over")!, FrontBook.BuiltIn.Scheme("bash")!, new Surface { AttachedPlay = 1 });
        Assert.Equal(["A/B/C shade", "back's path 5"], ledger.Fits.Where(fit => fit.Flank == Flank.Back).Select(fit => $"{fit.Gap} {fit.Fitter}"));
    }
}
