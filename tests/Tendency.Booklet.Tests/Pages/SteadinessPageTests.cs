using System.Text;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Tests.Pages;

/// <summary>A change planted after game 3, and none: 60 plays a game, first and ten and second and ten by turns.</summary>
public sealed class SteadinessPageTests
{
    [Fact]
    public void Compose_EveryHabitChangedAtOnce_SaysAfterWhichGameBeforeSinceAndTheChance()
    {
        var page = Page(42, 44, 40, 15, 16, 14);

        Assert.Contains("They changed after game 3: ", page, StringComparison.Ordinal);
        Assert.Contains("No habit held.", page, StringComparison.Ordinal);

        // 126 of 180 before, 45 of 180 since.
        Assert.Contains("Run share: changed after game 3: 70% before, 25% since (under 1% by luck alone)", page, StringComparison.Ordinal);
        Assert.Contains("changed after game 3, luck under 1%", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_NothingChanged_SaysEveryHabitHeld()
    {
        var page = Page(30, 32, 29, 31, 30, 28);

        Assert.Contains("Every habit held: none of three moved", page, StringComparison.Ordinal);
        Assert.DoesNotContain("What moved.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_ThreeGames_NamesNoGameOfAChange()
    {
        var page = Page(54, 54, 6);

        Assert.Contains("Three games can not show when: it takes four.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("changed after", page, StringComparison.Ordinal);
    }

    private static string Page(params int[] runsOfSixty)
    {
        var study = Studies.Of([.. runsOfSixty.Select(Chart)]);
        study = study with { Steadiness = SteadyHabits.Follow(study.Plays, Habit.Usual, seed: 1, draws: 999) };
        return BlockText.Of(BookletOrder.Compose(study, DateTimeOffset.UnixEpoch, ["steadiness"]).Pages.Single());
    }

    // Runs come in pairs of plays, so that both downs have their half of them.
    private static string Chart(int runs, int game)
    {
        var text = new StringBuilder("game,play,down,distance,call\n");
        for (var play = 1; play <= 60; play++)
        {
            text.Append($"G{game + 1},{play},{1 + (play % 2)},10,{(play <= runs ? "run" : "pass")}\n");
        }

        return text.ToString();
    }
}
