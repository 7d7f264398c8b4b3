using System.CommandLine;
using Tendency.Booklet.Pdf;
using Tendency.Files;

namespace Tendency.Input;

/// <summary>The staff's own picture on the cover.</summary>
internal static class LogoOption
{
    public static Option<string?> Create() => new("--logo") { Description = "A PNG of ours for the cover.", HelpName = "FILE.png" };

    /// <returns>The picture; null without one. Ends the command when the file cannot be one.</returns>
    public static ReadOnlyMemory<byte>? Read(string? path)
    {
        if (path is null)
        {
            return null;
        }

        var file = new FileInfo(path);
        if (!file.Exists || SpecialFiles.IsOne(path))
        {
            throw new CommandException($"--logo {path}: no such file.");
        }

        // A film named by mistake is not read into memory.
        if (Logo.TooLarge(file.Length) is { } large)
        {
            throw new CommandException($"--logo {path} {large}");
        }

        using var picture = new MemoryStream();
        using (var stream = InputFiles.Open(path))
        {
            stream.CopyTo(picture);
        }

        var bytes = picture.ToArray();
        return Logo.Problem(bytes) is { } problem ? throw new CommandException($"--logo {path} {problem}") : bytes;
    }
}
