namespace Tendency.Files;

/// <summary>What a path stands for, links followed.</summary>
internal static class SpecialFiles
{
    private const int MostLinks = 40;

    /// <summary>Whether the path names a device or a stream of a process, such as /dev/stdout: written to as it is, never replaced.</summary>
    public static bool IsOne(string path) => IsBelowDevices(Path.GetFullPath(path)) || IsBelowDevices(RealPath(path));

    /// <summary>The full path with every link on the way followed; as far as they lead anywhere.</summary>
    public static string RealPath(string path)
    {
        var real = Path.GetFullPath(path);
        for (var followed = 0; followed < MostLinks; followed++)
        {
            if (FirstLink(real) is not { } link || link.ResolveLinkTarget(returnFinalTarget: false) is not { } target)
            {
                break;
            }

            real = Path.GetFullPath(target.FullName + real[link.FullName.Length..]);
        }

        return real;
    }

    private static FileSystemInfo? FirstLink(string path)
    {
        var root = Path.GetPathRoot(path)!;
        var step = root;
        foreach (var part in path[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            step = Path.Combine(step, part);
            if (new FileInfo(step) is { LinkTarget: not null } link)
            {
                return link;
            }
        }

        return null;
    }

    private static bool IsBelowDevices(string path) =>
        path.StartsWith("/dev/", StringComparison.Ordinal) || path.StartsWith("/proc/", StringComparison.Ordinal);
}
