using System.Text;

namespace Tendency.Tests.Commands;

/// <summary>What the text of tables and tells says of games that part: 50 plays a game, of a change planted after game 3 and of none.</summary>
public sealed class DriftTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Tables_ChangePlantedAfterGameThree_SaysSoWithItsChance()
    {
        Write("chart.csv", 36, 35, 37, 10, 11, 9);

        // 108 of 150 and 30 of 150. No shuffle of six steady games comes near, so the chance is the least the draws can show.
        var ran = _tendency.Run("tables", "chart.csv", "--of", "call");

        Assert.Contains("All plays: run changed after game 3: 72% before, 20% since (under 1% by luck alone)\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("1 share followed over 6 games: 1 moved, and luck alone moves about one in twenty.", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_ByGame_FollowsTheSameShares()
    {
        Write("chart.csv", 36, 35, 37, 10, 11, 9);

        Assert.Contains("All plays: run changed after game 3:", _tendency.Run("tables", "chart.csv", "--by", "game", "--of", "call").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_NothingChanged_SaysNothingMoved()
    {
        Write("chart.csv", 25, 27, 24, 26, 25, 24);

        var ran = _tendency.Run("tables", "chart.csv", "--of", "call");

        Assert.Contains("1 share followed over 6 games: none moved farther than luck moves it.", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("changed", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_ThreeGames_NamesNoGameOfAChange()
    {
        Write("chart.csv", 40, 40, 5);

        var ran = _tendency.Run("tables", "chart.csv", "--of", "call");

        Assert.DoesNotContain("changed after", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Three games can not show when.", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("csv")]
    [InlineData("json")]
    public void Tables_DataFormats_HoldTheTableAlone(string format)
    {
        Write("chart.csv", 36, 35, 37, 10, 11, 9);

        Assert.DoesNotContain("changed", _tendency.Run("tables", "chart.csv", "--of", "call", "--format", format).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_TellThatFaded_SaysAfterWhichGame()
    {
        // From trips they always ran for three games and seldom since; from doubles run and pass are even throughout.
        var text = new StringBuilder("game,play,down,distance,call,formation\n");
        for (var game = 1; game <= 6; game++)
        {
            for (var play = 1; play <= 60; play++)
            {
                var trips = play <= 20;
                var run = trips ? game <= 3 ? play <= 20 : play <= 11 : play % 2 == 0;
                text.Append($"G{game},{play},1,10,{(run ? "run" : "pass")},{(trips ? "trips" : "doubles")}\n");
            }
        }

        _ = _tendency.Write("chart.csv", text.ToString());

        Assert.Matches("Trips: run .*\n.*; changed after game 3: 100% before, 55% since \\(under 1% by luck alone\\)\n", _tendency.Run("tells", "chart.csv", "--dimensions", "formation").Output);
    }

    private void Write(string name, params int[] runsOfFifty)
    {
        var text = new StringBuilder("game,play,down,distance,call\n");
        foreach (var (game, runs) in runsOfFifty.Index())
        {
            for (var play = 1; play <= 50; play++)
            {
                text.Append($"G{game + 1},{play},1,10,{(play <= runs ? "run" : "pass")}\n");
            }
        }

        _ = _tendency.Write(name, text.ToString());
    }
}
