namespace Tendency.Files;

/// <summary>Every file the command reads is opened here, so that no output can take the place of one.</summary>
internal static class InputFiles
{
    /// <summary>A million characters: a week file of a whole season has a few thousand.</summary>
    private const int MostText = 1_000_000;

    private static readonly HashSet<string> s_read = new(StringComparer.Ordinal);

    public static Stream Open(string path)
    {
        _ = s_read.Add(SpecialFiles.RealPath(path));

        // A pipe that nobody writes to has no length either, and opening it would wait for ever.
        return new FileInfo(path) is { Length: 0 } && !SpecialFiles.IsOne(path) ? Stream.Null : File.OpenRead(path);
    }

    /// <summary>A file of settings as text.</summary>
    public static string Text(string path)
    {
        using var reader = new StreamReader(Open(path));
        var text = new char[MostText + 1];
        var length = reader.ReadBlock(text);
        return length <= MostText ? new string(text, 0, length) : throw new CommandException($"{path} is too long for a week file.");
    }

    public static bool WasRead(string path) => s_read.Contains(SpecialFiles.RealPath(path));
}
