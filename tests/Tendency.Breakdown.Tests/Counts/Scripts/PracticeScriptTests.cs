using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Counts.Scripts;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.Tests.Shared;

namespace Tendency.Breakdown.Tests.Counts.Scripts;

public class PracticeScriptTests
{
    private static readonly ScriptPeriod s_team = ScriptPeriod.All[0];

    [Fact]
    public void Draw_TwelveOfTwenty_KeepsCallSchemeAndFormationByHand()
    {
        // 12 runs and 8 passes: of 10 snaps 6 and 4. Runs: inside zone 6, power 4, duo 2 -> of 6 snaps 3, 2, 1. Passes: stick 5, flood 3
        // -> of 4 snaps 2.5 and 1.5, the tie to the larger: 3, 1. Formations: doubles 11, trips 9 -> of 10 snaps 5.5 and 4.5: 6, 4.
        var plays = Plays(
            [.. Rows(4, "run", "inside zone", "doubles"), .. Rows(2, "run", "inside zone", "trips"), .. Rows(2, "run", "power", "doubles"), .. Rows(2, "run", "power", "trips"),
            .. Rows(2, "run", "duo", "trips"), .. Rows(3, "pass", "stick", "doubles"), .. Rows(2, "pass", "stick", "trips"), .. Rows(2, "pass", "flood", "doubles"), .. Rows(1, "pass", "flood", "trips")]);

        var script = PracticeScript.Draw(plays, s_team, 10, seed: 3).Snaps;

        Assert.Equal(["inside zone 3", "power 2", "duo 1"], Mix(script.Where(snap => snap.Call == "run"), snap => snap.Detail));
        Assert.Equal(["stick 3", "flood 1"], Mix(script.Where(snap => snap.Call == "pass"), snap => snap.Detail));
        Assert.Equal(["doubles 6", "trips 4"], Mix(script, snap => snap.Formation));
    }

    [Fact]
    public void Draw_SchemesOfOneSnap_DoNotAllTakeTheirCommonestFormation()
    {
        // Four schemes of 5 plays, each 3 in doubles and 2 in trips. One snap each by itself would be doubles four times; 4 × 12/20 = 2.4.
        var plays = Plays([.. ((string[])["inside zone", "outside zone", "power", "duo"]).SelectMany(scheme => Rows(3, "run", scheme, "doubles").Concat(Rows(2, "run", scheme, "trips")))]);

        var script = PracticeScript.Draw(plays, s_team, 4, seed: 1).Snaps;

        Assert.Equal(["doubles 2", "trips 2"], Mix(script, snap => snap.Formation));
        Assert.Equal(4, script.Select(snap => snap.Detail).Distinct().Count());
    }

    [Theory]
    [InlineData("team", 12)]
    [InlineData("team", 24)]
    [InlineData("team", 60)]
    [InlineData("run", 16)]
    [InlineData("third-down", 12)]
    [InlineData("red-zone", 15)]
    public void Draw_Sample_KeepsTheMixWithRealPlaysNoneTwice(string name, int snaps)
    {
        var plays = Sample();
        var period = ScriptPeriod.All.Single(p => p.Name == name);

        var drawn = PracticeScript.Draw(plays, period, snaps, seed: 7);

        var script = drawn.Snaps;
        Assert.Equal(snaps, script.Count);
        Assert.Equal(Enumerable.Range(1, snaps), script.Select(snap => snap.Order));
        Assert.Equal(snaps, script.Select(snap => (snap.Game, snap.Play)).Distinct().Count());
        var real = Enumerable.Range(0, plays.Rows).ToDictionary(row => (plays.Category(ColumnNames.Game)[row], plays.Number(ColumnNames.Play)[row]!.Value));
        Assert.All(script, snap =>
        {
            var row = real[(snap.Game, snap.Play)];
            Assert.Equal(plays.Category(ColumnNames.Call)[row], snap.Call);
            Assert.Equal(plays.Category(ColumnNames.Formation)[row], snap.Formation);
            Assert.Equal(plays.Text(ColumnNames.Clip, row), snap.Clip);
        });
        AssertLargestRemainders(CrossTab.Values(drawn.Plays, ColumnNames.Call), script, snap => snap.Call);
        if (name is "team" or "run")
        {
            AssertLargestRemainders(CrossTab.Values(drawn.Plays, ColumnNames.Formation), script, snap => snap.Formation);
        }

        // In a short period a rare formation may come only with schemes that get no snap; none is a whole snap off its share even so.
        Assert.All(CrossTab.Values(drawn.Plays, ColumnNames.Formation), formation =>
            Assert.True(Math.Abs(script.Count(snap => snap.Formation == formation.Value) - ((double)snaps * formation.Count / drawn.Plays.Rows)) < 1, formation.Value));
        foreach (var call in script.GroupBy(snap => snap.Call))
        {
            var values = CrossTab.Values(drawn.Plays.Where(ColumnNames.Call, call.Key), call.Key == "pass" ? ColumnNames.PassConcept : ColumnNames.RunScheme);
            AssertLargestRemainders(values, [.. call], snap => snap.Detail);
        }
    }

    [Theory]
    [InlineData(ColumnNames.BackSide)]
    [InlineData(ColumnNames.Hash)]
    public void Draw_Sample_ComesNearTheMixOfWhatItIsNotStratifiedBy(string column)
    {
        var plays = Sample();

        var script = PracticeScript.Draw(plays, s_team, 24, seed: 1);

        foreach (var (value, count) in CrossTab.Values(plays, column))
        {
            var expected = 24.0 * count / plays.Rows;
            var shown = script.Snaps.Count(snap => plays.Category(column)[snap.Row] == value);
            Assert.InRange(shown, expected - 2, expected + 2);
        }
    }

    [Fact]
    public void Draw_SameSeed_IsTheSameScriptAndAnotherSeedIsNot()
    {
        var plays = Sample();

        var one = PracticeScript.Draw(plays, s_team, 24, 1).Snaps;

        Assert.Equal(one, PracticeScript.Draw(plays, s_team, 24, 1).Snaps);
        Assert.NotEqual(one, PracticeScript.Draw(plays, s_team, 24, 2).Snaps);
    }

    [Fact]
    public void Draw_MoreSnapsThanPlays_ShowsEachEquallyOften()
    {
        var plays = Plays([.. Rows(3, "run", "power", "doubles"), .. Rows(2, "pass", "stick", "trips")]);

        var script = PracticeScript.Draw(plays, s_team, 10, seed: 1).Snaps;

        Assert.Equal([2, 2, 2, 2, 2], script.GroupBy(snap => snap.Play).Select(group => group.Count()));
    }

    [Fact]
    public void Draw_RequiredColumnsOnly_StillKeepsTheCalls()
    {
        var plays = Read("game,play,down,distance,call\nA,1,1,10,run\nA,2,2,6,pass\nA,3,3,2,run\nA,4,1,10,run\n");

        var script = PracticeScript.Draw(plays, s_team, 4, seed: 1).Snaps;

        Assert.Equal(["run 3", "pass 1"], Mix(script, snap => snap.Call));
        Assert.All(script, snap => Assert.Equal("", snap.Detail));
        Assert.Contains("3 & 2", script.Select(snap => snap.Situation));
    }

    [Fact]
    public void Draw_PeriodWithoutPlays_IsEmpty() =>
        Assert.Empty(PracticeScript.Draw(Read("game,play,down,distance,call\nA,1,1,10,run\n"), ScriptPeriod.All.Single(p => p.Name == "red-zone"), 12, 1).Snaps);

    private static void AssertLargestRemainders(IReadOnlyList<(string Value, int Count)> values, IReadOnlyList<ScriptSnap> snaps, Func<ScriptSnap, string> of)
    {
        var wanted = values.Zip(LargestRemainder.Of([.. values.Select(v => v.Count)], snaps.Count)).Where(v => v.Second > 0).Select(v => $"{v.First.Value} {v.Second}");
        Assert.Equal(wanted.Order(StringComparer.Ordinal), Mix(snaps, of).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Mix(IEnumerable<ScriptSnap> snaps, Func<ScriptSnap, string> of) =>
        snaps.GroupBy(of).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).Select(group => $"{group.Key} {group.Count()}");

    private static IEnumerable<string> Rows(int count, string call, string detail, string formation) =>
        Enumerable.Repeat(call == "run" ? $"1,10,run,{detail},,{formation}" : $"1,10,pass,,{detail},{formation}", count);

    private static PlayLog Plays(IEnumerable<string> rows) =>
        Read("game,play,down,distance,call,run_scheme,pass_concept,formation\n" + string.Join('\n', rows.Select((row, i) => $"A,{i + 1},{row}")) + "\n");

    private static PlayLog Read(params string[] charts)
    {
        var read = ChartReader.Read([.. charts.Select((chart, i) => new ChartSource($"{i}.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(chart))))], WeekPlan.Default, Glossary.BuiltIn);
        var log = DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn);
        return StudiedPlays.Choose(log, WeekPlan.Default, [], Unit.Offense, out _)!.Plays;
    }

    private static PlayLog Sample() =>
        Read([.. Directory.GetFiles(Checkout.SampleLogs("port-halden"), "*.csv").Order(StringComparer.Ordinal).Select(File.ReadAllText)]);
}
