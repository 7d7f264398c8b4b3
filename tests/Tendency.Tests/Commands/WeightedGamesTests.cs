using System.Globalization;
using System.Text;

namespace Tendency.Tests.Commands;

/// <summary>Games against fronts like ours counted more, through the built program: two games of 20 plays against our Over, 15 runs each; two against a Bear, 5 runs each.</summary>
public sealed class WeightedGamesTests : IDisposable
{
    private const string Plan = "\n[plan]\nfronts = [\"over\", \"tight\"]\n";

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Tables_KeyOrOption_GiveTheShareWorkedByHand()
    {
        Write("charts", "like_our_defense = true\n" + Plan, "over");
        Write("asked", Plan, "over");

        var key = _tendency.Run("tables", "charts", "--of", "call", "--format", "csv");
        var option = _tendency.Run("tables", "asked", "--of", "call", "--like-ours", "--format", "csv");

        // Weights 1, 1, 1/4, 1/4: runs (15 + 15 + 5/4 + 5/4) / 50 = 0.65; plain counts stay.
        Assert.Equal(key.Output, option.Output);
        Assert.Equal("outcome,plays,count,share,low,high", key.Output.Split('\n')[0]);
        var run = key.Output.Split('\n').Single(line => line.StartsWith("run,", StringComparison.Ordinal)).Split(',');
        Assert.Equal(("80", "40", 0.65), (run[1], run[2], Math.Round(double.Parse(run[3], CultureInfo.InvariantCulture), 12)));
        Assert.Contains("Games against fronts like ours count more.\n  Ash counts 1, 20 of 20 charted fronts like ours\n", key.Error, StringComparison.Ordinal);
        Assert.Contains("  Dogwood counts 0.25, 0 of 20 charted fronts like ours\n  80 plays count like 59 of equal weight\n", key.Error, StringComparison.Ordinal);
        Assert.Equal(0, key.ExitCode);
    }

    [Fact]
    public void Tables_TextAndHalfLife_MultiplyAndSayWhatThePlaysAreWorth()
    {
        Write("charts", Plan, "over");

        var ran = _tendency.Run("tables", "charts", "--of", "call", "--half-life", "1", "--like-ours");

        // 1/8, 1/4, 1/8, 1/4: Kish (2.5 + 5 + 2.5 + 5)² / (20 (1/64 + 1/16 + 1/64 + 1/16)) = 225 / 3.125 = 72.
        Assert.Matches(@"run +80 +40 .* 72\n", ran.Output);
        Assert.Contains("  Birch counts 0.25, 20 of 20", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_OnlySomePlays_WeighByTheWholeGame()
    {
        Write("charts", "like_our_defense = true\n" + Plan, "over");

        Assert.Contains("Cedar counts 0.25, 0 of 20", _tendency.Run("tables", "charts", "--of", "call", "--only", "call=run").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, "over", "", "week.toml:1:1 like_our_defense: Line 1, column 1: like_our_defense needs the fronts of our plan, and [plan] names none: all games count alike.")]
    [InlineData(false, "over", "", "--like-ours: The plan names no fronts")]
    [InlineData(true, "", Plan, "week.toml:1 like_our_defense: front is not charted. All games count alike.")]
    [InlineData(true, "okie", Plan, "None of the fronts charted is in our plan. Charted: okie, bear. Our plan: over, tight. All games count alike.")]
    [InlineData(true, "over", "\n[plan]\nfronts = [\"ovr\"]\n", "No front of our plan is one we know: ovr. All games count alike.")]
    [InlineData(false, "okie", Plan, "--like-ours: None of the fronts charted is in our plan.")]
    public void Tables_NothingToWeighBy_SaysWhyAndCountsAllAlike(bool byKey, string front, string plan, string says)
    {
        Write("charts", (byKey ? "like_our_defense = true\n" : "") + plan, front);

        string[] asked = ["tables", "charts", "--of", "call", "--format", "csv"];
        var ran = _tendency.Run([.. asked, .. byKey ? (string[])[] : ["--like-ours"]]);

        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("run,80,40,0.5,", ran.Output, StringComparison.Ordinal);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("count more", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Fronts_Key_RanksOnTheWeightedMixAndSaysSo()
    {
        Write("charts", "like_our_defense = true\n" + Plan, "over");
        Write("alike", Plan, "over");

        string[] asked = ["--break-even", "--format", "csv"];
        var weighted = _tendency.Run(["fronts", "charts", .. asked]);
        var alike = _tendency.Run(["fronts", "alike", .. asked]);

        // Power, a gap scheme: 30 of 40 runs, weighted 30 / 32.5.
        Assert.Equal(30 / 32.5, ShareNow(weighted), 12);
        Assert.Equal(0.75, ShareNow(alike), 12);
        Assert.Contains("Games against fronts like ours count more.", weighted.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("count more", alike.Error, StringComparison.Ordinal);

        static double ShareNow(Ran ran) => double.Parse(ran.Output.Split('\n').First(line => line.Split(',')[2] == "gap").Split(',')[3], CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Tables_AFrontByAnotherOfItsNames_IsOurs()
    {
        Write("charts", "like_our_defense = true\n[plan]\nfronts = [\"Five_To-Back\"]\n", "five to back");

        Assert.Contains("Ash counts 1, 20 of 20", _tendency.Run("tables", "charts", "--of", "call").Error, StringComparison.Ordinal);
    }

    private void Write(string folder, string week, string front)
    {
        _ = _tendency.Write($"{folder}/week.toml", week);
        foreach (var (file, game, faced, runs, scheme) in new[]
        {
            ("1.csv", "Ash", front, 15, "power"), ("2.csv", "Birch", front, 15, "power"),
            ("3.csv", "Cedar", front.Length > 0 ? "bear" : "", 5, "inside zone"), ("4.csv", "Dogwood", front.Length > 0 ? "bear" : "", 5, "inside zone"),
        })
        {
            var text = new StringBuilder("game,play,down,distance,call,run_scheme,run_side,back_side,strength,front\n");
            for (var play = 1; play <= 20; play++)
            {
                text.Append($"{game},{play},1,10,{(play <= runs ? $"run,{scheme},R" : "pass,,")},L,R,{faced}\n");
            }

            _ = _tendency.Write($"{folder}/{file}", text.ToString());
        }
    }
}
