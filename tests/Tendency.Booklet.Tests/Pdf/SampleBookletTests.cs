using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;
using Tendency.Booklet.Tests.Pages;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Tests.Pdf;

/// <summary>Whole booklets of real charts, read back: nothing clipped, nothing over anything, whatever was charted.</summary>
public sealed class SampleBookletTests
{
    private static readonly string[] Required = [ColumnNames.Game, ColumnNames.Play, ColumnNames.Down, ColumnNames.Distance, ColumnNames.Call];

    public static TheoryData<string> Charts => ["one game", "twelve games", "required columns", "long words", "other scripts", "few plays"];

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Print_FiveGames_NoFaultAndNoHalfEmptyPage(PaperSize paper) => Assert.Empty(Inspect(Studies.FiveGames, paper).Findings);

    [Theory]
    [MemberData(nameof(Charts))]
    public void Print_OddCharts_NothingOutsideOrOverlapping(string charts)
    {
        var study = charts switch
        {
            "one game" => Studies.Games(1),
            "twelve games" => Studies.Games(12),
            "required columns" => Studies.Keeping(column => Required.Contains(column)),
            "long words" => Studies.Changed((header, cell) => header is "formation" or "run_scheme" or "pass_concept" or "game" or "protection" ? $"{cell} Donaudampfschifffahrtsgesellschaft {cell}" : cell),
            "other scripts" => Studies.Changed((header, cell) => header is "formation" or "run_scheme" or "game" ? $"Ñandú 漢字 {cell}" : cell),
            _ => Studies.Of([.. Studies.Files().Take(1).Select(chart => string.Join('\n', chart.Split('\n').Take(12)) + "\n")]),
        };
        Assert.Empty(Inspect(study, PaperSize.Letter).Findings.Where(finding => finding.Fault != PageFault.HalfEmpty));
    }

    private static PdfInspection Inspect(Study study, PaperSize paper)
    {
        using var stream = new MemoryStream();
        PdfPrinter.Print(BookletOrder.Compose(study, DemoBooklet.Dated), paper, stream);
        return PdfCheck.Inspect(stream);
    }
}
