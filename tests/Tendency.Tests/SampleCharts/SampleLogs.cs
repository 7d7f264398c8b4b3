using Tendency.Tests.Shared;

namespace Tendency.Tests.SampleCharts;

/// <summary>The sample-logs folder of the repository, read here without the program's own reader.</summary>
internal static class SampleLogs
{
    public static string Root { get; } = Checkout.SampleLogs();

    public static string[] CleanFolders { get; } = ["port-halden", "our-team/offense", "our-team/defense"];

    /// <summary>A clean chart's rows by header. Clean charts quote nothing.</summary>
    public static List<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(file);
        var headers = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => headers.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second))];
    }

    public static IEnumerable<string> CleanCharts() =>
        CleanFolders.SelectMany(folder => Directory.GetFiles(Path.Combine(Root, folder), "*.csv").Order(StringComparer.Ordinal));
}
