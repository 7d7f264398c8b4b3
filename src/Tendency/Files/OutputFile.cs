using System.Text;

namespace Tendency.Files;

/// <summary>Where data goes: standard output, or a file that is written whole or not at all.</summary>
internal static class OutputFile
{
    private static int s_parts;

    /// <param name="path">The file; null = standard output.</param>
    public static void Write(string? path, string text)
    {
        if (path is null)
        {
            using var output = Console.OpenStandardOutput();
            output.Write(Encoding.UTF8.GetBytes(text));
            return;
        }

        Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>Writes into a neighbour of the file and moves it into place only when all of it is there.</summary>
    public static void Write(string path, Action<Stream> write)
    {
        Check(path);
        if (SpecialFiles.IsOne(path))
        {
            WriteThrough(path, write);
            return;
        }

        var whole = Path.GetFullPath(path);

        // A short name of its own: the neighbour of a file with the longest name allowed has one, too.
        var part = Path.Combine(Path.GetDirectoryName(whole)!, $".tendency-{Environment.ProcessId}-{Interlocked.Increment(ref s_parts)}.part");
        try
        {
            using (var stream = new FileStream(part, FileMode.Create, FileAccess.ReadWrite))
            {
                write(stream);
            }

            File.Move(part, whole, overwrite: true);
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>Ends the command where the file can not or must not be written.</summary>
    public static void Check(string? path)
    {
        if (path is null)
        {
            return;
        }

        if (string.IsNullOrWhiteSpace(path) || path.Contains('\0', StringComparison.Ordinal))
        {
            throw new CommandException($"'{path}' is no file name; name the file to write.");
        }

        if (Directory.Exists(path))
        {
            throw new CommandException($"{path} is a folder; name a file in it.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (!Directory.Exists(folder))
        {
            throw new CommandException($"{path}: the folder {folder} does not exist.");
        }

        if (InputFiles.WasRead(path))
        {
            throw new CommandException($"{path} is one of the files read, and those are never changed; name another file to write.");
        }
    }

    // A device or a pipe takes bytes as they come; it can not be moved into place, and must not be replaced by a file.
    private static void WriteThrough(string path, Action<Stream> write)
    {
        using var whole = new MemoryStream();
        write(whole);
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Write);
        stream.Write(whole.ToArray());
    }
}
