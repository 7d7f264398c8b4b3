using Tendency.Booklet.Blocks;
using Tendency.Booklet.Html;
using Tendency.Booklet.Pdf;
using Tendency.Files;

namespace Tendency.Output;

/// <summary>Pages as a file: a PDF, or HTML for a name that ends so.</summary>
internal static class PrintedFile
{
    /// <summary>Whether the file's name asks for pages rather than data.</summary>
    public static bool IsPrinted(string path) => IsHtml(path) || Path.GetExtension(path).Equals(".pdf", StringComparison.OrdinalIgnoreCase);

    /// <returns>0; so that it can be work with a spinner.</returns>
    public static int Write(ScoutingBooklet booklet, string path, PaperSize paper)
    {
        OutputFile.Write(path, stream =>
        {
            if (IsHtml(path))
            {
                HtmlPrinter.Print(booklet, stream);
            }
            else
            {
                PdfPrinter.Print(booklet, paper, stream);
            }
        });
        return 0;
    }

    private static bool IsHtml(string path) => Path.GetExtension(path).ToLowerInvariant() is ".html" or ".htm";
}
