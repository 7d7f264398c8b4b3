using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>Laws that hold for every front, scheme and surface.</summary>
public class GapLedgerTests
{
    private static readonly FrontBook Book = FrontBook.BuiltIn;

    private static IEnumerable<(Front Front, RunScheme Scheme, Surface Surface)> Everything() =>
        from front in Book.Fronts
        from scheme in Book.Schemes
        from attachedPlay in new[] { 0, 2 }
        from attachedBack in new[] { 0, 1 }
        from offBall in new[] { 0, 1 }
        from wings in new[] { 0, 1 }
        from empty in scheme.Insert == InsertKind.BackLeads ? new[] { false, true } : [false]
        from runTo in front.SetBy == SetBy.Back ? new RunTo?[] { RunTo.Away, null } : [RunTo.ToBack]
        select (front, scheme, new Surface
        {
            AttachedPlay = attachedPlay,
            AttachedBack = attachedBack,
            OffBall = offBall,
            WingPlay = wings,
            WingBack = attachedBack * wings,
            IsEmpty = empty,
            RunTo = runTo,
            Strength = attachedPlay >= attachedBack ? Flank.Play : Flank.Back,
        });

    [Fact]
    public void Of_EveryCell_UncoveredGapsEqualMissingMen()
    {
        foreach (var (front, scheme, surface) in Everything())
        {
            var ledger = GapLedger.Of(front, scheme, surface);
            foreach (var (flank, count) in new[] { (Flank.Play, ledger.Play), (Flank.Back, ledger.Back) })
            {
                var fits = ledger.Fits.Where(f => f.Flank == flank).ToArray();
                Assert.Equal(count.Gaps, fits.Length);
                Assert.Equal(Math.Max(0, -count.SpareLate), fits.Count(f => f.IsUncovered));
                Assert.Equal(Math.Max(0, -count.SpareNow), fits.Count(f => f.IsUncovered || f.IsLate));
            }

            Assert.Equal(Math.Max(0, ledger.Play.SpareLate) + Math.Max(0, ledger.Back.SpareLate), ledger.Spare.Count);
        }
    }

    /// <summary>The paper's own check: total gaps = 1 + men who block in the core + gaps of a second runner.</summary>
    [Fact]
    public void Of_EveryCell_TotalIsOneMoreThanBlockersAndSecondRunners()
    {
        foreach (var (front, scheme, surface) in Everything())
        {
            // A wing blocks where he stands or where he is brought: he is counted once.
            var blockers = 5 + surface.AttachedPlay + surface.AttachedBack + surface.WingPlay + surface.WingBack + scheme.Insert switch
            {
                InsertKind.Always => surface.OffBall == 0 && surface.WingPlay + surface.WingBack > 0 ? 0 : 1,
                InsertKind.IfOffBall => surface.OffBall,
                InsertKind.BackLeads => surface.IsEmpty ? 0 : 1,
                _ => 0,
            };
            Assert.Equal(1 + blockers + scheme.AddsPlay + scheme.AddsBack, GapLedger.Of(front, scheme, surface).All.Gaps);
        }
    }

    [Fact]
    public void Of_SafetiesArrive_NeverTakesAManAwayAndBringsAtMostTwo()
    {
        foreach (var (front, scheme, surface) in Everything())
        {
            var all = GapLedger.Of(front, scheme, surface).All;
            Assert.InRange(all.Late - all.Now, 0, 2);
            Assert.InRange(all.Late, 6, 9);
        }
    }

    /// <summary>A puller changes the total by 0, the play's side by 1 and the backside by -1.</summary>
    [Fact]
    public void Of_OnePuller_MovesAGapToThePlay()
    {
        var front = Book.Front("over")!;
        var surface = new Surface { AttachedPlay = 1 };
        var without = GapLedger.Of(front, Book.Scheme("duo")!, surface);
        var with = GapLedger.Of(front, Book.Scheme("trap")!, surface);
        Assert.Equal((without.Play.Gaps + 1, without.Back.Gaps - 1), (with.Play.Gaps, with.Back.Gaps));
    }

    /// <summary>Mirrored fronts see mirrored pictures: five to back against a run to the back is five away against the same run away.</summary>
    [Theory]
    [InlineData("five to back", "five away")]
    [InlineData("edge away", "edge to back")]
    public void Of_MirroredFronts_CountTheSame(string one, string other)
    {
        foreach (var scheme in Book.Schemes)
        {
            var to = new Surface { AttachedPlay = 1, RunTo = RunTo.ToBack };
            var away = to with { RunTo = RunTo.Away };
            Assert.Equal(GapLedger.Of(Book.Front(one)!, scheme, to).Text, GapLedger.Of(Book.Front(other)!, scheme, away).Text);
        }
    }

    [Theory]
    [InlineData(Tag.Read, 0, 1)]
    [InlineData(Tag.Bash, 0, 1)]
    [InlineData(Tag.Rpo, 0, 0)]
    public void Of_TagOnInsideZone_AddsTheSecondRunnersGap(Tag tag, int play, int back)
    {
        var front = Book.Front("tight")!;
        var scheme = Book.Scheme("inside zone")!;
        var surface = new Surface { AttachedPlay = 1 };
        var plain = GapLedger.Of(front, scheme, surface);
        var tagged = GapLedger.Of(front, scheme, surface, tag);
        Assert.Equal((play, back), (tagged.Play.Gaps - plain.Play.Gaps, tagged.Back.Gaps - plain.Back.Gaps));
    }

    [Fact]
    public void Of_ThrowOffADefender_TakesOneManOutNowAndLate()
    {
        var front = Book.Front("tight")!;
        var scheme = Book.Scheme("inside zone")!;
        var plain = GapLedger.Of(front, scheme, new Surface());
        var tagged = GapLedger.Of(front, scheme, new Surface(), Tag.Rpo);
        Assert.Equal((plain.All.Now - 1, plain.All.Late - 1), (tagged.All.Now, tagged.All.Late));
    }

    [Theory]
    [InlineData(Shell.TwoDeep, "play 0/+1; back -1/0; all -1/+1")]
    [InlineData(Shell.Invert, "play 0/0; back 0/0; all 0/0")]
    [InlineData(Shell.Cloud, "play 0/0; back 0/+1; all 0/+1")]
    [InlineData(Shell.Buzz, "play +1/+1; back -1/-1; all 0/0")]
    [InlineData(Shell.ManFree, "play -1/0; back -1/-1; all -2/-1")]
    public void Of_InsideZoneAgainstTight_ShellDecidesWhoHelps(Shell shell, string spare)
    {
        var ledger = GapLedger.Of(Book.Front("tight")!, Book.Scheme("inside zone")!, new Surface { AttachedPlay = 1 }, shell: shell);
        Assert.Equal(spare, ledger.Text);
    }

    [Fact]
    public void Of_FrontsWithoutThreeSafeties_IgnoreTheShell()
    {
        foreach (var front in Book.Fronts.Where(f => !f.HasThreeSafeties))
        {
            var texts = Enum.GetValues<Shell>().Select(s => GapLedger.Of(front, Book.Scheme("power")!, new Surface(), shell: s).Text);
            Assert.Single(texts.Distinct());
        }
    }

    [Fact]
    public void Sentence_TightAgainstPower_ReadsPlainly()
    {
        var ledger = GapLedger.Of(Book.Front("tight")!, Book.Scheme("power")!, new Surface { OffBall = 1 });
        Assert.Equal(
            "Tight against power: 5 gaps to the play, 5 men at the snap, 6 once the safety comes; every gap has a man and the safety comes free; the backside is 1 short until the safety comes.",
            ledger.Sentence);
    }
}
