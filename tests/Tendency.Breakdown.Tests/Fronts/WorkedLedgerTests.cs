using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>Fifteen ledgers worked by hand from the counting rules, tight end on the strength's side in 11 personnel unless said.</summary>
public class WorkedLedgerTests
{
    private static readonly Surface ToTheTightEnd = new() { AttachedPlay = 1, Strength = Flank.Play };
    private static readonly Surface ToTheOpenSide = new() { AttachedBack = 1, Strength = Flank.Back };
    private static readonly Surface TightEndOffTheBall = new() { OffBall = 1 };
    private static readonly Surface FourReceivers = new();

    public static TheoryData<string, string, string, Surface, NoseRule?, int, int, string> Worked => new()
    {
        { "E1", "tight", "inside zone", ToTheTightEnd, null, 4, 3, "play 0/+1; back -1/0; all -1/+1" },
        { "E2", "tight", "inside zone", FourReceivers, null, 3, 3, "play +1/+2; back -1/0; all 0/+2" },
        { "E3", "tight", "power", TightEndOffTheBall, null, 5, 2, "play 0/+1; back -1/0; all -1/+1" },
        { "E3b", "tight", "power", TightEndOffTheBall, NoseRule.Lag, 5, 2, "play -1/0; back 0/+1; all -1/+1" },
        { "E4", "tight", "counter gt", ToTheOpenSide, null, 5, 2, "play -1/+1; back 0/0; all -1/+1" },
        { "E5", "tight", "zone read", ToTheTightEnd, null, 4, 4, "play 0/0; back -2/0; all -2/0" },
        { "E6", "tight", "bash", ToTheTightEnd, null, 6, 2, "play -1/0; back -1/0; all -2/0" },
        { "E7", "double five", "power", TightEndOffTheBall, null, 5, 2, "play 0/+1; back -1/0; all -1/+1" },
        { "E8", "over", "duo", ToTheTightEnd, null, 4, 3, "play 0/+1; back 0/0; all 0/+1" },
        { "E8b", "over", "duo", ToTheTightEnd with { Overhang = Flank.Back }, null, 4, 3, "play -1/0; back +1/+1; all 0/+1" },
        { "E9", "bear", "outside zone", ToTheTightEnd, null, 4, 3, "play +1/+1; back -1/0; all 0/+1" },
        { "E10", "tight", "split zone", TightEndOffTheBall, null, 3, 4, "play +1/+1; back -2/0; all -1/+1" },
        { "E11", "under", "iso", ToTheOpenSide with { OffBall = 1 }, null, 4, 4, "play 0/0; back -1/0; all -1/0" },
        { "E12", "tight", "qb power", ToTheTightEnd, null, 6, 2, "play -1/0; back -1/0; all -2/0" },
        { "E13", "okie", "zone read", ToTheTightEnd, null, 4, 4, "play 0/0; back -1/0; all -1/0" },
    };

    [Theory]
    [MemberData(nameof(Worked))]
    public void Of_WorkedExample_CountsAsByHand(
        string example, string front, string scheme, Surface surface, NoseRule? nose, int play, int back, string spare)
    {
        var ledger = Ledger(front, scheme, surface, nose);
        Assert.Equal((example, play, back, play + back, spare), (example, ledger.Play.Gaps, ledger.Back.Gaps, ledger.All.Gaps, ledger.Text));
    }

    /// <summary>Who fits where, as the worked examples name them.</summary>
    [Theory]
    [InlineData("tight", "inside zone", 1, 0, "A: backside linebacker, B: 4i, C: playside linebacker, D: overhang")]
    [InlineData("double five", "power", 0, 1, "A: nose, B: playside linebacker, C inside the puller: backside linebacker, C between the puller and the kick-out: 5, C outside the kick-out: overhang")]
    [InlineData("over", "duo", 1, 0, "A: playside linebacker, B: 3, C: 7, D: overhang")]
    [InlineData("bear", "outside zone", 1, 0, "A: nose, B: 3, C: playside linebacker, D: edge")]
    public void Of_WorkedExample_GivesEachGapItsMan(string front, string scheme, int attached, int offBall, string fits)
    {
        var ledger = Ledger(front, scheme, new Surface { AttachedPlay = attached, OffBall = offBall }, null);
        var play = ledger.Fits.Where(f => f.Flank == Flank.Play).Select(f => $"{f.Gap}: {(f.IsLate ? "" : f.Fitter)}");
        Assert.Equal(fits, string.Join(", ", play));
    }

    /// <summary>Common practice, no source: an inside linebacker runs inside-out to the quarterback, where a side waits for a safety the pitch is his.</summary>
    [Theory]
    [InlineData("over", "triple option", "keep: playside linebacker, pitch: safety")]
    [InlineData("over", "speed option", "pitch: playside linebacker")]
    public void Of_OptionToTheSideWithoutAnOverhang_LeavesThePitchToWhoComesFree(string front, string scheme, string fits)
    {
        var added = Ledger(front, scheme, ToTheOpenSide, null).Fits.Where(fit => fit.Gap is "keep" or "pitch").Select(fit => $"{fit.Gap}: {fit.Fitter}");
        Assert.Equal(fits, string.Join(", ", added));
    }

    [Fact]
    public void Of_CounterToTheOpenSide_SaysTheEdgeIsASafety()
    {
        var ledger = Ledger("tight", "counter gt", ToTheOpenSide, null);
        Assert.Contains(ledger.Flags, f => f.Kind == LeverageKind.EdgeIsASafety);
        Assert.Contains(ledger.Flags, f => f.Kind == LeverageKind.LivingOnTheSafety);
    }

    [Fact]
    public void Of_BearAgainstOutsideZone_CountsThePostSafetyOnTheCutbackAndSaysSo()
    {
        var ledger = Ledger("bear", "outside zone", ToTheTightEnd, null);
        Assert.Contains(ledger.Flags, f => f.Kind == LeverageKind.PostSafety);
        Assert.Contains(ledger.Fits, f => f is { Flank: Flank.Back, Fitter: "post safety", IsLate: true });
    }

    private static GapLedger Ledger(string front, string scheme, Surface surface, NoseRule? nose) =>
        GapLedger.Of(FrontBook.BuiltIn.Front(front)!, FrontBook.BuiltIn.Scheme(scheme)!, surface, nose: nose);
}
