using Tendency.SampleCharts;

namespace Tendency.Tests.SampleCharts;

public sealed class SampleFilesTests
{
    private static readonly Dictionary<string, byte[]> Written = SampleFiles.All().ToDictionary(file => file.Path, file => file.Bytes);

    public static TheoryData<string> Paths() => [.. Written.Keys];

    /// <summary>If this fails: dotnet run --project tests/Tendency.SampleCharts -- sample-logs</summary>
    [Theory]
    [MemberData(nameof(Paths))]
    public void All_FixedSeeds_AreTheFilesInTheRepository(string path)
    {
        Assert.Equal(Written[path], File.ReadAllBytes(Path.Combine(SampleLogs.Root, path)));
    }

    /// <summary>The page beside the charts is written by hand; its counts must be those of the charts.</summary>
    [Fact]
    public void Readme_Tables_CarryTheCountsOfTheCharts()
    {
        var page = File.ReadAllText(Path.Combine(SampleLogs.Root, "README.md"));
        var tells = File.ReadAllLines(Path.Combine(SampleLogs.Root, "planted", "tells.csv")).Skip(1).Select(line =>
        {
            var tail = line[(line.LastIndexOf('"') + 1)..].Split(',');
            var name = line.Contains('"') ? line.Split('"')[1] : line.Split(',')[1];
            return $"| {name} | {tail[^4].Replace("-", " to ")} | {tail[^2]} of {tail[^3]} | {tail[^1]} |";
        });
        Assert.All(tells, row => Assert.Contains(row, page, StringComparison.Ordinal));
    }
}
