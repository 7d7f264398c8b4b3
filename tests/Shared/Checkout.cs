namespace Tendency.Tests.Shared;

/// <summary>The checkout that the tests were built from, found by walking up: compiled-in paths differ under continuous integration.</summary>
internal static class Checkout
{
    /// <summary>The folder of Tendency.sln.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>A file or folder below sample-logs.</summary>
    public static string SampleLogs(string path = "") => Path.Combine(Root, "sample-logs", path);

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "Tendency.sln"))
        ? folder
        : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Tendency.sln is not above the tests."));
}
