using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Tests.Fronts;

public class LedgerAgreementTests
{
    private static readonly FrontBook Book = FrontBook.BuiltIn;

    /// <summary>
    /// The figures the developers' notes print. Counted men and judged angles hardly agree in rank, against one run not at all:
    /// that is why both are printed and never added.
    /// </summary>
    [Fact]
    public void Of_ExpertRatings_CountAndAnglesAnswerDifferentQuestions()
    {
        var agreement = LedgerAgreement.Of(Book, r => r.Basis != "rule");
        Assert.Equal(546, agreement.Cells);
        Assert.Equal((0.112, 0.091), (Math.Round(agreement.KendallNow, 3), Math.Round(agreement.KendallLate, 3)));
        Assert.Equal((0.136, 0.108), (Math.Round(agreement.SpearmanNow, 3), Math.Round(agreement.SpearmanLate, 3)));
        Assert.Equal((-0.027, -0.067), (Math.Round(agreement.WithinNow, 3), Math.Round(agreement.WithinLate, 3)));
    }

    [Fact]
    public void Partings_AreBadAnglesWithAManToSpareOrGoodOnesShortOfMen()
    {
        var partings = LedgerAgreement.Of(Book, r => r.Basis != "rule").Partings;
        Assert.Equal(68, partings.Count);
        Assert.Contains(partings, p => p.Rating is { Front: "wide nine", Scheme: "draw", Value: -2 } && p.PlayNow == 1);
        Assert.Contains(partings, p => p.Rating is { Front: "bear", Scheme: "counter gt", Value: 1 } && p.PlayLate == -0.5);
    }
}
