namespace Tendency.Booklet.Tests.Infra;

internal static class Repo
{
    /// <summary>The folder of Tendency.sln, found upwards from the test's own folder.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "Tendency.sln"))
        ? folder
        : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Tendency.sln is not above the tests."));
}
