namespace Tendency.Tests.Commands;

/// <summary>The tables of the front check on one chart: a run to each side, a read and a throw off a defender.</summary>
public sealed class FrontsCommandTests : IDisposable
{
    private static readonly string[] s_runs =
    [
        "weak,R,none,inside zone,R,none,4", "strong,R,none,counter gt,L,none,1", "weak,R,none,zone read,R,read,6", "weak,R,none,inside zone,R,bubble,5",
    ];

    private static readonly string s_chart = "game,play,down,distance,call,personnel,strength,back_set,result,back_side,attached,wing,run_scheme,run_side,read,gain\n"
        + string.Concat(s_runs.Concat(s_runs).Select((run, i) => $"A,{i + 1},1,10,run,11,R,gun,rush,{run}\n"));

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Theory]
    [InlineData("--matrix", "front,run_scheme,side,plays,successes,prior,success_allowed,low,high,ledger")]
    [InlineData("--break-even", "front_a,front_b,family,share_now,low,high,break_even_share,better_below,better_above")]
    [InlineData("--ledger", "front,run_scheme,side,runs,gap_side,gap,fitter,fits")]
    [InlineData("--shells", "front,run_scheme,side,runs,shell,ledger")]
    [InlineData("--options", "situation,kind,runs,count,share,low,high")]
    [InlineData("--extra-fitter", "front,shell,read_man,extra_fitter,fits,ledger")]
    [InlineData("--agreement", "front,run_scheme,side,rating,play_now,play_late,all_late")]
    public void Fronts_EachTable_HasItsColumnsAndRows(string table, string columns)
    {
        var lines = Lines(table);
        Assert.Equal(columns, lines[0]);
        Assert.True(lines.Length > 1);
    }

    [Fact]
    public void Fronts_ChartWithoutSchemes_SaysWhichColumnsAreMissingAndComparesNothing()
    {
        _ = _tendency.Write("bare.csv", "game,play,down,distance,call\nA,1,1,10,run\nA,2,1,10,pass\n");
        var ran = _tendency.Run("fronts", "bare.csv", "--break-even", "--format", "csv");
        Assert.Single(ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("not charted: run_scheme", ran.ErrorLines);
        Assert.Contains("not charted: attached", ran.ErrorLines);
    }

    [Fact]
    public void Fronts_TwoTables_AreRefusedByName()
    {
        _ = _tendency.Write("chart.csv", s_chart);
        var ran = _tendency.Run("fronts", "chart.csv", "--matrix", "--shells");
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("--shells", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>Tight against counter to the open side, worked by hand: five gaps, four men at the snap, the edge waits for the outside safety.</summary>
    [Fact]
    public void Ledger_TightAgainstCounterToTheOpenSide_NamesEveryGapAndItsMan()
    {
        var play = Lines("--ledger").Select(line => line.Split(',')).Where(cells => (cells[0], cells[1], cells[4]) == ("tight", "counter gt", "play")).ToArray();
        Assert.Equal(5, play.Length);
        Assert.Equal(("outside safety", "late"), (play[^1][6], play[^1][7]));
        Assert.Equal(4, play.Count(cells => cells[7] == "at the snap"));
    }

    [Fact]
    public void Options_ReadAndThrow_AreCountedApart()
    {
        var all = Lines("--options").Where(line => line.StartsWith("all plays,", StringComparison.Ordinal)).Select(line => string.Join(',', line.Split(',')[1..4]));
        Assert.Equal(["read,8,2", "bash,8,0", "option,8,0", "rpo,8,2"], all);
    }

    [Theory]
    [InlineData("two-deep", "outside safety", "late")]
    [InlineData("cloud", "corner", "at the snap")]
    [InlineData("buzz", "", "nobody")]
    public void ExtraFitter_TightByShell_IsTheManTheShellBrings(string shell, string man, string fits)
    {
        var cells = Lines("--extra-fitter").Single(line => line.StartsWith($"tight,{shell},", StringComparison.Ordinal)).Split(',');
        Assert.Equal((man, fits), (cells[3], cells[4]));
    }

    [Fact]
    public void Agreement_Text_SaysHowFarCountAndRatingAgree()
    {
        _ = _tendency.Write("chart.csv", s_chart);
        var ran = _tendency.Run("fronts", "chart.csv", "--agreement");
        Assert.Contains("over 546 cells (Kendall): 0.11 at the snap, 0.09 late", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>A staff's slips are named with line and nearest word by every command that would read its files; the rest is used.</summary>
    [Theory]
    [InlineData("fronts")]
    [InlineData("tables", "--of", "call")]
    [InlineData("booklet", "-o", "week.pdf")]
    public void StaffFiles_WithSlips_AreUsedButForTheirSlips(string command, params string[] rest)
    {
        WriteStaffFiles();
        var ran = _tendency.Run([command, ".", .. rest]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("fronts.csv:3 nose: 'flots' is none of: floats, to play, fixed. Did you mean 'floats'?", ran.Error, StringComparison.Ordinal);
        Assert.Contains("ratings.csv:3 front: 'nickel ovr' is no front we know. Did you mean 'nickel over'?", ran.Error, StringComparison.Ordinal);
        Assert.Contains("week.toml:2 plan.fronts: 'fve to back' is no front that is known. Did you mean 'five to back'?", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void StaffFiles_FrontAndRating_AreInTheMatrix()
    {
        WriteStaffFiles();
        var cells = _tendency.Run("fronts", ".", "--matrix", "--format", "csv").Output.Split('\n').Select(line => line.Split(',')).Where(cells => cells[0] == "nickel over").ToArray();
        Assert.NotEmpty(cells);
        Assert.All(cells.Where(cell => cell[1] == "inside zone"), cell => Assert.Equal("0.33", cell[5]));
    }

    private void WriteStaffFiles()
    {
        _ = _tendency.Write("chart.csv", s_chart);
        _ = _tendency.Write("week.toml", "[plan]\nfronts = [\"tight\", \"fve to back\", \"nickel over\"]\nfronts_file = \"fronts.csv\"\nratings_file = \"ratings.csv\"\n");
        _ = _tendency.Write("fronts.csv", "front,line_to,line_off,nose,linebackers,overhangs,late\nnickel over,3 7,1 5,fixed,2,1,one\ntilt,3 5,5,flots,2,1,one\n");
        _ = _tendency.Write("ratings.csv", "front,scheme,rating\nnickel over,inside zone,2\nnickel ovr,power,1\n");
    }

    private string[] Lines(string table)
    {
        _ = _tendency.Write("chart.csv", s_chart);
        return _tendency.Run("fronts", "chart.csv", table, "--format", "csv").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
