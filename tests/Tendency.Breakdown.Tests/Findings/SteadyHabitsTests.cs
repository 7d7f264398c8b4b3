using Tendency.Breakdown.Findings;

namespace Tendency.Breakdown.Tests.Findings;

public sealed class SteadyHabitsTests
{
    private static readonly Habit s_runs = new("Run share", [], "call", "run");

    [Fact]
    public void Follow_SameEveryGame_Steady()
    {
        var plays = ChartOfCalls.Of(6, ("strong", "none", _ => 15, _ => 15));

        var steady = SteadyHabits.Follow(plays, s_runs, seed: 1, draws: 999)!;

        Assert.False(steady.Moved);
        Assert.Equal((90, 180), (steady.Total.Count, steady.Total.Plays));
    }

    [Fact]
    public void Follow_RunsDryUpAfterThreeGames_SaysSo()
    {
        var plays = ChartOfCalls.Of(6, ("strong", "none", g => g < 3 ? 36 : 10, g => g < 3 ? 14 : 40));

        var moved = SteadyHabits.Follow(plays, s_runs, seed: 1, draws: 999)!;

        Assert.Equal(3, moved.ChangeAfter);
        Assert.StartsWith("changed after game 3: 72% before, 20% since", moved.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Follow_ChangeAfterAGameWithTooFewPlays_NamesTheGameByItsNumberAmongAll()
    {
        // Game 2 has two plays, too few to follow: the change comes after the third game of the season, the second of those followed.
        var plays = ChartOfCalls.Of(6, ("strong", "none", g => g == 1 ? 1 : g < 3 ? 36 : 10, g => g == 1 ? 1 : g < 3 ? 14 : 40));

        var moved = SteadyHabits.Follow(plays, s_runs, seed: 1, draws: 999)!;

        Assert.Equal((2, 3), (moved.ChangeAfter, moved.ChangeAfterGame));
        Assert.StartsWith("changed after game 3: 72% before, 20% since", moved.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Follow_ThreeGames_ClaimsNoChangePoint()
    {
        var plays = ChartOfCalls.Of(3, ("strong", "none", g => g < 2 ? 36 : 10, g => g < 2 ? 14 : 40));

        Assert.Null(SteadyHabits.Follow(plays, s_runs, seed: 1, draws: 99)!.ChangeP);
    }

    [Fact]
    public void Follow_AnyOtherValue_CountsMotions()
    {
        var plays = ChartOfCalls.Of(3, ("strong", "none", _ => 10, _ => 5), ("strong", "jet", _ => 4, _ => 1));

        var motion = SteadyHabits.Follow(plays, new Habit("Motion", [], "motion", "!none"), seed: 1, draws: 99)!;

        Assert.Equal((15, 60), (motion.Total.Count, motion.Total.Plays));
    }

    [Fact]
    public void Follow_UsualHabits_PassesOverWhatIsNotCharted()
    {
        var plays = ChartOfCalls.Of(4, ("strong", "none", _ => 10, _ => 5), ("weak", "jet", _ => 4, _ => 9));

        var followed = SteadyHabits.Follow(plays, Habit.Usual, seed: 1, draws: 99);

        Assert.Equal(["Motion before the snap", "Run share", "Run, back strong", "Run, back weak"], followed.Select(s => s.Habit.Name).Order(StringComparer.Ordinal));
    }
}
