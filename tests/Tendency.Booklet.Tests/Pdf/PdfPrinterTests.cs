using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;

namespace Tendency.Booklet.Tests.Pdf;

public sealed class PdfPrinterTests
{
    [Fact]
    public void Print_Twice_SameBytes()
    {
        Assert.Equal(Print(PaperSize.Letter), Print(PaperSize.Letter));
    }

    private static byte[] Print(PaperSize paper)
    {
        using var stream = new MemoryStream();
        PdfPrinter.Print(DemoBooklet.Make(), paper, stream);
        if (Environment.GetEnvironmentVariable("TENDENCY_DEMO") is { Length: > 0 } folder)
        {
            File.WriteAllBytes(Path.Combine(folder, $"demo-{paper}.pdf"), stream.ToArray());
        }

        return stream.ToArray();
    }
}
