using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Situations;

namespace Tendency.Breakdown.Tests.Findings.SelfScouts;

public sealed class SelfScoutTests
{
    private static readonly SelfScoutReport s_offense = SelfScout.Run(OurTeam.Offense, SelfScoutOptions.Default);
    private static readonly SelfScoutReport s_defense = SelfScout.Run(OurTeam.Defense, SelfScoutOptions.Default);

    /// <summary>What sample-logs/README.md says is planted in our offense: a word of the look, and the call.</summary>
    [Theory]
    [InlineData("formation=two tight", "run")]
    [InlineData("back_set=pistol", "run")]
    [InlineData("formation=trips", "pass")]
    [InlineData("first_of_series=yes", "run")]
    [InlineData("wing_side=strong", "split zone")]
    [InlineData("motion=orbit", "screen")]
    [InlineData("", "away")]
    public void Run_OurOffense_FindsWhatIsPlanted(string look, string call) =>
        Assert.Contains(s_offense.Tells, t => t.Tell.Outcome == call && t.Tell.Situation.Contains(look, StringComparison.Ordinal));

    [Theory]
    [InlineData("hash=L", "tight")]
    [InlineData("hash=R", "five to back")]
    [InlineData("personnel=12", "bear")]
    [InlineData("long_yardage=yes", "pressure")]
    [InlineData("long_yardage=yes", "to back")]
    [InlineData("near_goal=yes", "cover 1")]
    [InlineData("shell=2", "quarters")]
    public void Run_OurDefense_FindsWhatIsPlanted(string look, string call) =>
        Assert.Contains(s_defense.Tells, t => t.Tell.Outcome == call && t.Tell.Situation.Contains(look, StringComparison.Ordinal));

    [Fact]
    public void Run_AnyUnit_RanksByCost()
    {
        foreach (var report in (SelfScoutReport[])[s_offense, s_defense])
        {
            Assert.Equal(report.Tells.OrderByDescending(t => t.Cost), report.Tells);
            Assert.Equal(Enumerable.Range(1, report.Tells.Count), report.Tells.Select(t => t.Rank));
        }
    }

    [Fact]
    public void Run_OldTell_IsSaidToBeOldAndFadedOnTime()
    {
        // Ten of ten runs with the back strong in six games, then three of ten in two; the last four are on film.
        var early = Scout(ChartOfCalls.Of(8, ("strong", "none", g => g < 6 ? 10 : 3, g => g < 6 ? 0 : 7), ("weak", "none", _ => 5, _ => 15)));

        var faded = Look(early);

        Assert.Equal("G7", faded.History.Faded);
        Assert.Equal((26, 40), (faded.History.SeenCount, faded.History.SeenPlays));
        Assert.True(faded.History.IsSeen);
    }

    [Fact]
    public void Run_TheCallsItAsksFor_AreTheFewestThatHideTheLook()
    {
        // The look: nine of ten runs in each of five games, elsewhere ten of twenty.
        var tell = Look(Scout(Games(5, 9, 1)));

        Assert.Equal(10, tell.Break.SnapsAGame);
        Assert.Equal("pass", tell.Other);
        var calls = tell.Break.Calls!.Value;
        var ahead = tell.Break.Games * tell.Break.SnapsAGame;

        // Recounted by the search itself on charts with those games added: with the calls it is listed by none, with one fewer it still is
        // (by the search alone, paying for nothing else, or by its range).
        Assert.False(StillTells(calls));
        Assert.True(StillTells(calls - 1));
        Assert.DoesNotContain(Scout(After(calls)).Tells, t => t.Tell.Situation == "back_offset=strong");

        PlayLog After(int passes) => Games(5, 9, 1, [.. Enumerable.Range(0, tell.Break.Games).Select(g => BreakCount.Part(passes, tell.Break.Games, g))]);

        bool StillTells(int passes)
        {
            var plays = After(passes);
            var found = Tells.Search(plays, "call", TellOptions.Default with { Dimensions = ["back_side"], Depth = 1 }).Tells.FirstOrDefault(t => t.Situation == "back_side=strong");
            double x = 45 + ahead - passes, n = 50 + ahead, usual = (50 + (10 * tell.Break.Games) + x) / (100 + (20 * tell.Break.Games) + n);
            return found is not null || WilsonLow(x, n) > usual;
        }

        // Wilson 1927, worked here from its formula.
        static double WilsonLow(double x, double n)
        {
            const double Z = 1.959963984540054;
            var p = x / n;
            return ((p + (Z * Z / (2 * n))) - (Z * Math.Sqrt((p * (1 - p) / n) + (Z * Z / (4 * n * n))))) / (1 + (Z * Z / n));
        }
    }

    [Fact]
    public void Run_NothingCharted_SaysWhatIsMissing()
    {
        var report = Scout(ChartOfCalls.Of(2, ("strong", "none", _ => 3, _ => 3)));

        Assert.Empty(report.Tells);
        Assert.Contains(("Run scheme", "run_scheme"), report.NotCharted);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("pass")]
    public void Run_CoinFlips_GiveNothingAway(string call)
    {
        var report = Scout(ChartOfCalls.Of(5, ("strong", "none", _ => 10, _ => 10), ("weak", "jet", _ => 8, _ => 8), ("weak", "none", _ => 7, _ => 7)));

        Assert.DoesNotContain(report.Tells, t => t.Tell.Outcome == call);
    }

    // Openers stand first in these charts and run more for it: not what is asked.
    private static SelfTell Look(SelfScoutReport report) => Assert.Single(report.Tells, t => t.Tell.Situation == "back_offset=strong");

    private static SelfScoutReport Scout(PlayLog plays) => SelfScout.Run(new StudiedPlays("", Unit.Offense, plays, []), SelfScoutOptions.Default);

    /// <summary>Games of ten snaps of the look and twenty others; then one game for each number of passes from the look.</summary>
    private static PlayLog Games(int games, int runs, int passes, params int[] then) => ChartOfCalls.Of(
        games + then.Length,
        ("strong", "none", g => g < games ? runs : runs + passes - then[g - games], g => g < games ? passes : then[g - games]),
        ("weak", "none", _ => 10, _ => 10));
}
