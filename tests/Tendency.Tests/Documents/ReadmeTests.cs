using System.Text.RegularExpressions;
using Tendency.Tests.Commands;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Documents;

/// <summary>Runs what README.md tells a reader to type, in a folder that holds the sample charts.</summary>
public sealed partial class ReadmeTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    public ReadmeTests() => Copy(Checkout.SampleLogs(), Path.Combine(_tendency.Folder, "sample-logs"));

    public void Dispose() => _tendency.Dispose();

    public static TheoryData<string> Commands()
    {
        var commands = new TheoryData<string>();
        foreach (var line in File.ReadLines(Path.Combine(Checkout.Root, "README.md")))
        {
            // A block's line, or a command in the middle of a sentence. Two spaces part a command from what it is for.
            foreach (Match command in line.StartsWith("tendency ", StringComparison.Ordinal) ? Command().Matches(line) : Quoted().Matches(line))
            {
                commands.Add(command.Groups["arguments"].Value);
            }
        }

        return commands;
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Readme_Command_RunsOnTheSampleCharts(string command)
    {
        var arguments = command.Split(' ');

        var ran = _tendency.Run(arguments);

        // 1 = done, and the charts have problems: the tired ones do, by design.
        Assert.Equal(command.Contains("tired", StringComparison.Ordinal) ? 1 : 0, ran.ExitCode);
        Assert.True(arguments.Contains("-o")
            ? new FileInfo(Path.Combine(_tendency.Folder, arguments[^1])).Length > 0
            : ran.Output.Length > 0, ran.Error);
    }

    [Fact]
    public void Readme_Tour_HasCommands() => Assert.True(Commands().Count >= 5);

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            _ = Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    [GeneratedRegex(@"^tendency (?<arguments>\S+(?: \S+)*)")]
    private static partial Regex Command();

    [GeneratedRegex(@"`tendency (?<arguments>[^`]+)`")]
    private static partial Regex Quoted();
}
