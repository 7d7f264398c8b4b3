namespace Tendency.Tests.House;

/// <summary>Finds the checkout from wherever the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    /// <summary>Source files under a folder of the checkout, as paths relative to its root.</summary>
    public static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Root, file));

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Tendency.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("No Tendency.sln above the tests.");
    }
}
