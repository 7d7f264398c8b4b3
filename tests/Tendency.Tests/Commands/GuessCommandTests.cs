using System.Globalization;
using System.Text.RegularExpressions;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

public sealed partial class GuessCommandTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Guess_Csv_HasTheContractsColumnsAndModels()
    {
        var ran = _tendency.Run("guess", Checkout.SampleLogs("port-halden"), "--forward", "3", "--format", "csv");

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(',')).ToArray();
        Assert.Equal(["model", "plays", "accuracy", "log_loss", "brier", "bits_saved"], lines[0]);
        Assert.Equal(["base rate", "down and distance", "all"], lines.Skip(1).Select(line => line[0]));
        var loss = lines.Skip(1).Select(line => double.Parse(line[3], CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal((loss[0] - loss[2]) / Math.Log(2), double.Parse(lines[3][5], CultureInfo.InvariantCulture), 9);
    }

    [Fact]
    public void Guess_Text_EveryTableCountsEveryGuessedPlayOnce()
    {
        var ran = _tendency.Run("guess", Checkout.SampleLogs("port-halden"));

        var tables = ran.Output.Split("\n\n").Select(table => table.Split('\n', StringSplitOptions.RemoveEmptyEntries)).ToArray();
        Assert.Equal(["model", "run said", "game", "most readable"], tables.Take(4).Select(table => Gap().Split(table[0])[0]));
        var plays = int.Parse(Gap().Split(tables[0][3])[1], CultureInfo.InvariantCulture);
        Assert.All(tables[1..3], table => Assert.Equal(plays, table.Skip(1).Sum(line => int.Parse(Gap().Split(line)[1], CultureInfo.InvariantCulture))));
        Assert.Equal(5, tables[2].Length - 1);
    }

    [Fact]
    public void Guess_OneGame_SaysWhyThereIsNothingToScore()
    {
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call\nA,1,1,10,run\nA,2,2,6,pass\n");

        var ran = _tendency.Run("guess", "chart.csv");

        Assert.Contains("nothing to score: only 1 game charted; a game is guessed from 1 other", ran.Error, StringComparison.Ordinal);
        _ = Assert.Single(ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("game", "--of: game names the snap; it is nothing they call. Guess call, run_scheme, run_to or pass_concept.")]
    [InlineData("gain", "--of: gain is a number, not one of a few answers. Guess success or explosive.")]
    public void Guess_ColumnThatIsNoAnswer_IsRefused(string of, string why)
    {
        var ran = _tendency.Run("guess", Checkout.SampleLogs("port-halden"), "--of", of);

        Assert.Equal(2, ran.ExitCode);
        Assert.Empty(ran.Output);
        Assert.Contains(why + "\nSee: tendency guess --help\n", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Guess_ManyOutcomes_ListsOnlySituationsRightMoreOftenThanOverallInTheOrderShown()
    {
        var ran = _tendency.Run("guess", Checkout.SampleLogs("port-halden"), "--of", "run_scheme", "--only", "call=run");

        var tables = ran.Output.Split("\n\n").Select(table => table.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => Gap().Split(line)).ToArray()).ToArray();
        var overall = Whole(tables[0][3][2]);
        var most = tables.Single(table => table[0][0] == "most readable");
        Assert.Equal(["most readable", "plays", "right", "bits to expect", "bits saved a play"], most[0]);
        Assert.All(most.Skip(1), row => Assert.True(Whole(row[2]) >= overall, row[0]));
        var expected = most.Skip(1).Select(row => double.Parse(row[3], CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(expected.OrderDescending(), expected);
        Assert.DoesNotContain("usually call", ran.Output, StringComparison.Ordinal);

        static int Whole(string percent) => int.Parse(percent.TrimEnd('%'), CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Guess_Text_SetsWhatIsShownAgainstDownAndDistanceAndSaysWhatItStartsFrom()
    {
        var ran = _tendency.Run("guess", Checkout.SampleLogs("port-halden"));

        // 171 runs and 159 passes are charted; a fold's commoner call is not what always saying one would have scored.
        Assert.Matches(@"Guessed right: \d+% from all they show, \d+% from down and distance alone, 52% by always saying run\.", ran.Output);
        Assert.Contains("start from what offenses usually call (one professional season's counts)", ran.Output, StringComparison.Ordinal);
        Assert.Matches(@"model +plays +right +low +high +log loss +Brier +bits saved a play +low +high\n", ran.Output);
    }

    [GeneratedRegex("  +")]
    private static partial Regex Gap();
}
