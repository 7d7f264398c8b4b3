namespace Tendency.Input;

/// <summary>Keeps a folder someone sent from reading files elsewhere: a link in it that leads out is refused.</summary>
internal static class FolderBounds
{
    /// <summary>The file's path, if every step from the folder to it stays inside.</summary>
    /// <exception cref="CommandException">A link on the way leads out of the folder.</exception>
    public static string Inside(string folder, string file)
    {
        // The folder may itself be named through a link; that is the user's business.
        var named = Path.GetFullPath(folder);
        var root = Real(new DirectoryInfo(named));
        var step = named;
        foreach (var part in Path.GetRelativePath(step, Path.GetFullPath(file)).Split(Path.DirectorySeparatorChar))
        {
            step = Path.Combine(step, part);
            FileSystemInfo info = Directory.Exists(step) ? new DirectoryInfo(step) : new FileInfo(step);
            if (info.LinkTarget is not null && !IsBelow(root, Real(info)) && !IsBelow(named, Real(info)))
            {
                throw new CommandException($"{file} is a link that leads out of {folder}; put the file itself there, or name it on the command line.");
            }
        }

        return file;
    }

    private static string Real(FileSystemInfo info) => info.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? info.FullName;

    private static bool IsBelow(string root, string path) =>
        path.StartsWith(root.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
