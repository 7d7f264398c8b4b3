using SkiaSharp;
using Tendency.Booklet.Pdf;

namespace Tendency.Booklet.Tests.Pdf;

public class LogoTests
{
    [Fact]
    public void Problem_SmallPng_IsNone() => Assert.Null(Logo.Problem(Png(60, 30)));

    [Fact]
    public void Problem_OtherFile_SaysItIsNoPng() => Assert.Contains("is not a PNG", Logo.Problem("GIF89a and so on, a few bytes more"u8), StringComparison.Ordinal);

    [Fact]
    public void Problem_EmptyFile_SaysItIsNoPng() => Assert.Contains("is not a PNG", Logo.Problem([]), StringComparison.Ordinal);

    [Fact]
    public void Problem_TooManyPixels_NamesThem() => Assert.Contains("5001 by 2 pixels", Logo.Problem(Png(5001, 2)), StringComparison.Ordinal);

    [Fact]
    public void Problem_TooManyBytes_NamesThem() => Assert.Contains("600 kB, at most 500 kB", Logo.Problem([.. Png(2, 2), .. new byte[600_000]]), StringComparison.Ordinal);

    [Fact]
    public void Problem_HeaderWithoutPicture_SaysItIsDamaged() => Assert.Contains("damaged", Logo.Problem(Png(60, 30).AsSpan(0, 30)), StringComparison.Ordinal);

    private static byte[] Png(int width, int height)
    {
        using var bitmap = new SKBitmap(width, height);
        return bitmap.Encode(SKEncodedImageFormat.Png, 100).ToArray();
    }
}
