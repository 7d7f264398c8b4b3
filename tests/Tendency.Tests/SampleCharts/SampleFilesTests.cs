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
}
