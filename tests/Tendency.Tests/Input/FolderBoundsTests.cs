using Tendency.Tests.Commands;

namespace Tendency.Tests.Input;

public class FolderBoundsTests
{
    private const string Chart = "game,play,down,distance,call\nNorth,1,1,10,run\n";

    [Theory]
    [InlineData("")]
    [InlineData("[[charts]]\nfile = \"link.csv\"\n")]
    public void Run_FolderWithALinkThatLeadsOut_ReadsNothing(string week)
    {
        using var program = new TendencyProgram();
        var outside = program.Write("outside.csv", Chart);
        var folder = Path.GetDirectoryName(program.Write("week/chart.csv", Chart))!;
        _ = File.CreateSymbolicLink(Path.Combine(folder, "link.csv"), outside);
        if (week.Length > 0)
        {
            _ = program.Write("week/week.toml", week);
        }

        var ran = program.Run("audit", "week");

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("is a link that leads out of week", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FolderWithALinkThatStaysInside_ReadsIt()
    {
        using var program = new TendencyProgram();
        _ = program.Write("week/chart.csv", Chart);
        _ = File.CreateSymbolicLink(Path.Combine(program.Folder, "week", "again.csv"), "chart.csv");

        Assert.Contains("rows 2 = ", program.Run("audit", "week").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WeekFileThatNamesAFileElsewhere_SaysLineAndColumn()
    {
        using var program = new TendencyProgram();
        _ = program.Write("chart.csv", Chart);
        _ = program.Write("week/week.toml", "[[charts]]\nfile = \"../chart.csv\"\n");

        Assert.Contains("Line 2, column 1", program.Run("audit", "week").Output, StringComparison.Ordinal);
    }
}
