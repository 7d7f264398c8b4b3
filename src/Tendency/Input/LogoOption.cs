using System.CommandLine;
using Tendency.Booklet.Pdf;

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
        if (!file.Exists)
        {
            throw new CommandException($"--logo {path}: no such file.");
        }

        // A film named by mistake is not read into memory.
        if (Logo.TooLarge(file.Length) is { } large)
        {
            throw new CommandException($"--logo {path} {large}");
        }

        var bytes = File.ReadAllBytes(path);
        return Logo.Problem(bytes) is { } problem ? throw new CommandException($"--logo {path} {problem}") : bytes;
    }
}
