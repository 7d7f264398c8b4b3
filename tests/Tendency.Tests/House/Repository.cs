using Tendency.Tests.Shared;

namespace Tendency.Tests.House;

/// <summary>The source files of the checkout, as paths relative to its root.</summary>
internal static class Repository
{
    /// <summary>Source files under a folder.</summary>
    public static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Checkout.Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Checkout.Root, file).Replace('\\', '/'))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Checkout.Root, file));
}
