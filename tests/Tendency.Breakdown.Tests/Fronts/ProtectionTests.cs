using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Protections;
using Tendency.Breakdown.Tests.Charts;

namespace Tendency.Breakdown.Tests.Fronts;

public class ProtectionTests
{
    [Fact]
    public void Slide_FullSlidesAndMissingSides_AreNotCounted()
    {
        const string chart = """
            game,play,down,distance,call,back_side,slide_side,protection
            A,1,3,8,pass,L,R,half slide
            A,2,3,8,pass,L,R,
            A,3,3,8,pass,L,R,six man
            A,4,3,8,pass,L,R,half slide
            A,5,3,8,pass,L,L,half slide
            A,6,3,8,pass,L,L,full slide
            A,7,3,8,pass,middle,L,half slide
            A,8,3,8,pass,L,,half slide
            A,9,3,8,run,L,R,
            """;
        var habits = Habits(ChartText.Plays(chart));
        Assert.Equal(["all passes", "third down", "third & long"], habits.Select(h => h.Group));
        Assert.All(habits, h => Assert.Equal((5, 4, false), (h.Plays, h.Away, h.IsHabit)));
    }

    [Theory]
    [InlineData(18, 2, "Put the rusher on the back's side. The slide goes away from him on 18 of 20.")]
    [InlineData(2, 18, "Put the rusher away from the back. The slide comes to him on 18 of 20.")]
    [InlineData(11, 9, "The slide gives no side away: away from the back on 11 of 20.")]
    public void Rusher_SlideHabit_DecidesTheSide(int away, int to, string sentence)
    {
        var log = ChartText.Plays(Chart(away, to));
        var check = FrontCheck.Of(log, FrontBook.BuiltIn, FrontBook.BuiltIn.Fronts, new FrontOptions { Draws = 500 });
        var plan = RusherPlan.Of(log, check, new LikelyRanges(log, 0.95))!;
        Assert.StartsWith(sentence, plan.Sentence);
        Assert.Equal("wide nine", plan.Fronts[0].Front);
        Assert.True(plan.Fronts[0].Cost > 0);
        Assert.Equal(0, plan.Fronts.Min(f => f.Cost), 1e-12);
    }

    /// <summary>Over puts its 5 and shade away from strength; edge to back puts the stand-up edge on the back's side wherever he stands.</summary>
    [Fact]
    public void Rusher_EdgeToBack_RushesFromTheBacksSide()
    {
        var log = ChartText.Plays(Chart(18, 2));
        var check = FrontCheck.Of(log, FrontBook.BuiltIn, FrontBook.BuiltIn.Fronts, new FrontOptions { Draws = 500 });
        var fronts = RusherPlan.Of(log, check, new LikelyRanges(log, 0.95))!.Fronts.ToDictionary(f => f.Front, f => f.RushThere);
        Assert.Equal((1, -1, 0), (fronts["edge to back"], fronts["five away"], fronts["edge away"]));
    }

    [Fact]
    public void Pressure_PassingSituationWithAKnownManSide_IsACandidate()
    {
        var spots = Spots(ChartText.Plays(Chart(18, 2)));
        var spot = spots.Single(s => s.Situation == "third and fourth, 7 and more");
        Assert.Equal((20, RunTo.ToBack, 20, 18), (spot.Passes, spot.ManSide, spot.Plays, spot.Count));
        Assert.Empty(Spots(ChartText.Plays(Chart(11, 9))));
    }

    [Fact]
    public void Rusher_NoSlideCharted_IsNotSaid()
    {
        var log = ChartText.Plays("game,play,down,distance,call\nA,1,1,10,pass\n");
        var check = FrontCheck.Of(log, FrontBook.BuiltIn, FrontBook.BuiltIn.Fronts, new FrontOptions { Draws = 500 });
        Assert.Null(RusherPlan.Of(log, check, new LikelyRanges(log, 0.95)));
        Assert.Empty(Habits(log));
    }

    private static IReadOnlyList<SlideHabit> Habits(PlayLog log) => SlideHabit.Of(log, new LikelyRanges(log, 0.95));

    private static IReadOnlyList<PressureSpot> Spots(PlayLog log) => PressureSpot.Of(log, new LikelyRanges(log, 0.95));

    private static string Chart(int away, int to)
    {
        var text = new StringBuilder("game,play,down,distance,call,back_side,slide_side,run_scheme,run_side\nA,1,1,10,run,L,,inside zone,R\n");
        for (var i = 0; i < away + to; i++)
        {
            text.Append($"A,{i + 2},3,8,pass,L,{(i < away ? 'R' : 'L')},,\n");
        }

        return text.ToString();
    }
}
