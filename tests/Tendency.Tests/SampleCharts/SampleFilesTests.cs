using Tendency.SampleCharts;

namespace Tendency.Tests.SampleCharts;

public sealed class SampleFilesTests
{
    public static TheoryData<string> Paths() => [.. SampleFiles.All().Select(file => file.Path)];

    /// <summary>If this fails: dotnet run --project tests/Tendency.SampleCharts -- sample-logs</summary>
    [Theory]
    [MemberData(nameof(Paths))]
    public void All_FixedSeeds_AreTheFilesInTheRepository(string path)
    {
        var written = SampleFiles.All().Single(file => file.Path == path).Bytes;
        Assert.Equal(written, File.ReadAllBytes(Path.Combine(SampleLogs.Root, path)));
    }
}
