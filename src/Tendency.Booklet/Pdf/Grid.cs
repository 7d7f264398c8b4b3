namespace Tendency.Booklet.Pdf;

/// <summary>The live area in points; the same on Letter and A4, so a booklet breaks alike on both. Left (or top, on a landscape sheet) is the punch margin.</summary>
internal sealed record Grid(double Left, double Top, double Width, double Height, bool Landscape)
{
    public static readonly Grid Portrait = new(54, 36, 516, 720, Landscape: false);
    public static readonly Grid Sheet = new(36, 54, 720, 516, Landscape: true);

    public double Right => Left + Width;

    public double Bottom => Top + Height;

    /// <summary>The footer's rule; blocks end above it.</summary>
    public double FooterRule => Landscape ? Bottom - 11 : 744;

    public double FooterBaseline => Landscape ? Bottom - 1 : 754;

    /// <summary>The lowest a block may reach.</summary>
    public double LastBlockBottom => FooterRule - 6;

    public (double Width, double Height) Paper(PaperSize paper)
    {
        var (shortSide, longSide) = paper == PaperSize.Letter ? (612.0, 792.0) : (595.276, 841.89);
        return Landscape ? (longSide, shortSide) : (shortSide, longSide);
    }
}
