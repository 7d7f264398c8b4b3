namespace Tendency.Breakdown.Tests.Charts;

/// <summary>Where the charts as sent lie: found by walking up, for compiled-in paths differ under continuous integration.</summary>
internal static class AsSentFolder
{
    public static string Path { get; } = Find();

    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(System.IO.Path.Combine(folder, "Tendency.sln")))
        {
            folder = System.IO.Path.GetDirectoryName(folder.TrimEnd(System.IO.Path.DirectorySeparatorChar))
                ?? throw new InvalidOperationException("Tendency.sln is not above the tests.");
        }

        return System.IO.Path.Combine(folder, "tests", "Tendency.Breakdown.Tests", "Charts", "AsSent");
    }
}
