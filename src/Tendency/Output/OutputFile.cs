using System.Text;

namespace Tendency.Output;

/// <summary>Where data goes: standard output, or a file that is written whole or not at all.</summary>
internal static class OutputFile
{
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
        var whole = Path.GetFullPath(path);
        var folder = Path.GetDirectoryName(whole)!;
        if (!Directory.Exists(folder))
        {
            throw new CommandException($"{path}: the folder {folder} does not exist.");
        }

        var part = Path.Combine(folder, $".{Path.GetFileName(whole)}.{Environment.ProcessId}.part");
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
}
