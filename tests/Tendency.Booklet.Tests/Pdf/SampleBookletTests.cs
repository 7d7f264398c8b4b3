using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;
using Tendency.Booklet.Tests.Pages;

namespace Tendency.Booklet.Tests.Pdf;

/// <summary>The whole booklet of five games, read back: nothing clipped, nothing over anything, no page half empty.</summary>
public sealed class SampleBookletTests
{
    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Print_FiveGames_NoFaultAndNoHalfEmptyPage(PaperSize paper) => Assert.Empty(Inspect(Studies.FiveGames, paper).Findings);

    private static PdfInspection Inspect(Study study, PaperSize paper)
    {
        using var stream = new MemoryStream();
        PdfPrinter.Print(BookletOrder.Compose(study, DemoBooklet.Dated), paper, stream);
        return PdfCheck.Inspect(stream);
    }
}
