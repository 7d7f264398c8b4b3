namespace Tendency.Booklet.Pdf;

public enum PaperSize
{
    /// <summary>US Letter, 612 × 792 points.</summary>
    Letter,

    /// <summary>ISO A4, 595 × 842 points.</summary>
    A4,
}
