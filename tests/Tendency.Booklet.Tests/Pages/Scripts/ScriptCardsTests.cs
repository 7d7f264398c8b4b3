using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Scripts;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Infra;
using Tendency.Breakdown.Counts.Scripts;

namespace Tendency.Booklet.Tests.Pages.Scripts;

public class ScriptCardsTests
{
    private static readonly DateTimeOffset s_dated = new(2026, 11, 21, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Compose_TwelveSnaps_ReadsAsBefore() => Golden.Check("Pages", "script-cards", BlockText.Of(Draw(Studies.FiveGames, "team", 12)));

    [Fact]
    public void Compose_PeriodNotCharted_SaysWhatIsMissing()
    {
        var text = BlockText.Of(Draw(Studies.Keeping(column => column is "game" or "play" or "down" or "distance" or "call"), "red-zone", 12));

        Assert.Contains("drawn by field_zone, filled on 0 of", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Print_Cards_HasNoFaultAndTheCautionOnce(PaperSize paper)
    {
        using var stream = new MemoryStream();
        PdfPrinter.Print(Draw(Studies.FiveGames, "team", 24), paper, stream);

        var check = PdfCheck.Inspect(stream);

        Assert.DoesNotContain(check.Findings, finding => finding.Fault is not PageFault.HalfEmpty);
        Assert.Equal(1, System.Text.RegularExpressions.Regex.Count(BlockText.Of(Draw(Studies.FiveGames, "team", 24)), "governing body"));
    }

    [Fact]
    public void Compose_RequiredColumnsOnly_StillHasACardASnap()
    {
        var cards = Draw(Studies.Keeping(column => column is "game" or "play" or "down" or "distance" or "call"), "team", 12).Pages.Last();

        Assert.Equal(12, cards.Blocks.OfType<SmallMultiples>().Single().Panels.Count);
    }

    private static ScoutingBooklet Draw(Booklet.Pages.Study study, string period, int snaps) =>
        ScriptCards.Compose(study, PracticeScript.Draw(study.Plays, ScriptPeriod.All.Single(p => p.Name == period), snaps, seed: 1), s_dated);
}
