using Tendency.Booklet.Pdf;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

/// <summary>The booklet that stands in reports/ is the one the program prints.</summary>
public sealed class SampleReportTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Booklet_SampleSeason_SaysWhatTheReportSaysAndReadsBackWithoutFault()
    {
        var ran = _tendency.Run("booklet", Checkout.SampleLogs("port-halden"), "-o", "now.pdf");
        var again = _tendency.Run("booklet", Checkout.SampleLogs("port-halden"), "-o", "again.pdf");

        Assert.Equal(0, ran.ExitCode);
        Assert.Equal(0, again.ExitCode);
        Assert.Equal(File.ReadAllBytes(Path.Combine(_tendency.Folder, "now.pdf")), File.ReadAllBytes(Path.Combine(_tendency.Folder, "again.pdf")));
        var now = Inspect(Path.Combine(_tendency.Folder, "now.pdf"));
        var report = Inspect(Path.Combine(Checkout.Root, "reports/port-halden.pdf"));
        Assert.Empty(now.Findings);
        Assert.Equal(report.Pages.Select(page => page.Text), now.Pages.Select(page => page.Text));
    }

    private static PdfInspection Inspect(string file)
    {
        using var stream = new MemoryStream(File.ReadAllBytes(file));
        return PdfCheck.Inspect(stream);
    }
}
