using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Tests.Charts;

namespace Tendency.Breakdown.Tests.Situations;

public class DerivedColumnsTests
{
    // Boundaries of zones and bands: common practice, no source; the defaults of the play chart.
    [Theory]
    [InlineData(1, 3, "short")]
    [InlineData(4, 6, "medium")]
    [InlineData(7, 10, "long")]
    [InlineData(11, 99, "extra long")]
    public void DistanceBand_AtItsLimits_HoldsThem(int least, int most, string band)
    {
        var log = ChartText.Plays($"game,play,down,distance,call\nA,1,2,{least},run\nA,2,2,{most},run\n");

        Assert.Equal([band, band], Words(log, ColumnNames.DistanceBand));
        Assert.Equal([$"2 & {band}", $"2 & {band}"], Words(log, ColumnNames.DownDistance));
    }

    [Theory]
    [InlineData("own 1", "own 10", "backed up")]
    [InlineData("own 11", "own 20", "coming out")]
    [InlineData("own 21", "opp 41", "open field")]
    [InlineData("opp 40", "+21", "fringe")]
    [InlineData("opp 20", "opp 11", "red zone")]
    [InlineData("opp 10", "opp 4", "tight red")]
    [InlineData("opp 3", "opp 1", "goal line")]
    public void FieldZone_AtItsLimits_HoldsThem(string far, string near, string zone)
    {
        var log = ChartText.Plays($"game,play,down,distance,call,ball_on\nA,1,3,1,run,{far}\nA,2,3,1,run,{near}\n");

        Assert.Equal([zone, zone], Words(log, ColumnNames.FieldZone));
    }

    [Fact]
    public void DownDistance_FirstDown_TellsTenAndGoalApart()
    {
        var log = ChartText.Plays("game,play,down,distance,call,ball_on\nA,1,1,10,run,50\nA,2,1,10,run,opp 10\nA,3,1,goal,run,opp 8\nA,4,1,15,run,own 20\nA,5,1,5,run,own 20\n");

        Assert.Equal(["1 & 10", "1 & goal", "1 & goal", "1 & extra long", "1 & medium"], Words(log, ColumnNames.DownDistance));
    }

    [Fact]
    public void RunTo_BackOnEitherSide_IsSeenFromTheBack()
    {
        var log = ChartText.Plays(
            "game,play,down,distance,call,strength,back_side,run_side,slide_side,pressure_side,hash\n"
            + "A,1,1,10,run,R,strong,R,L,both,L\nA,2,1,10,run,R,weak,R,L,L,R\nA,3,1,10,run,L,R,L,,R,M\nA,4,1,10,run,L,middle,L,,none,\nA,5,1,10,run,,L,L,,,\n");

        Assert.Equal(["to back", "away", "away", "", "to back"], Words(log, ColumnNames.RunTo));
        Assert.Equal(["strong", "weak", "weak", "middle", ""], Words(log, ColumnNames.BackSide));
        Assert.Equal(["away", "to back", "", "", ""], Words(log, ColumnNames.SlideTo));
        Assert.Equal(["", "to back", "to back", "", ""], Words(log, ColumnNames.PressureTo));
        Assert.Equal(["to strength", "to strength", "to strength", "to strength", ""], Words(log, ColumnNames.RunToStrength));
        Assert.Equal(["right", "left", "middle", "", ""], Words(log, ColumnNames.FieldSide));
    }

    [Fact]
    public void Call_RunPassOption_CountsByResult()
    {
        var log = ChartText.Plays("game,play,down,distance,call,result\nA,1,1,10,rpo,rush\nA,2,1,10,rpo,sack\nA,3,1,10,rpo,\nA,4,1,10,rpo,fumble\n");

        Assert.Equal(["run", "pass", "rpo", "rpo"], Words(log, ColumnNames.Call));
        Assert.Equal(["rpo", "rpo", "rpo", "rpo"], Words(log, ColumnNames.Called));
    }

    // 40, 60, 100 % of the distance (Carroll, Palmer & Thorn 1988, from memory).
    [Theory]
    [InlineData("1", 10, 4, "rush", "", "", "yes")]
    [InlineData("1", 10, 3, "rush", "", "", "no")]
    [InlineData("2", 5, 3, "rush", "", "", "yes")]
    [InlineData("2", 10, 5, "rush", "", "", "no")]
    [InlineData("3", 4, 4, "complete", "", "", "yes")]
    [InlineData("4", 4, 3, "complete", "", "", "no")]
    [InlineData("3", 9, 2, "rush", "yes", "", "yes")]
    [InlineData("1", 10, 40, "interception", "", "", "no")]
    [InlineData("1", 10, 5, "penalty", "", "replay", "")]
    [InlineData("1", 10, 5, "rush", "", "declined", "yes")]
    public void Success_ByDown_FollowsTheShareOfTheDistance(string down, int distance, int gain, string result, string touchdown, string effect, string success)
    {
        var log = ChartText.Plays($"game,play,down,distance,call,gain,result,touchdown,penalty_effect\nA,1,{down},{distance},run,{gain},{result},{touchdown},{effect}\n");

        Assert.Equal([success], Words(log, ColumnNames.Success));
    }

    [Fact]
    public void Explosive_RunAndPass_HaveTheirOwnLine()
    {
        var log = ChartText.Plays("game,play,down,distance,call,gain\nA,1,1,10,run,12\nA,2,1,10,run,11\nA,3,1,10,pass,16\nA,4,1,10,pass,15\nA,5,1,10,pass,\n");

        Assert.Equal(["yes", "no", "yes", "no", ""], Words(log, ColumnNames.Explosive));
    }

    [Fact]
    public void Sequence_NoPlayBetween_IsSkipped()
    {
        var log = ChartText.Plays("game,play,down,distance,call,series\nA,1,1,10,none,1\nA,2,1,10,run,1\nA,4,2,6,pass,1\nA,3,2,6,none,1\nA,5,1,10,pass,2\n");

        Assert.Equal(["no", "yes", "no", "no", "yes"], Words(log, ColumnNames.FirstOfSeries).Select(w => w.Length == 0 ? "no" : w));
        Assert.Equal(["", "", "run", "", ""], Words(log, ColumnNames.PreviousCall));
    }

    [Fact]
    public void ClockState_LateInTheGame_DependsOnTheScore()
    {
        var log = ChartText.Plays(
            "game,play,down,distance,call,quarter,clock,margin\nA,1,1,10,run,2,2:00,14\nA,2,1,10,run,2,2:01,14\nA,3,1,10,run,4,1:30,-3\nA,4,1,10,run,4,3:30,7\nA,5,1,10,run,4,3:30,-7\nA,6,1,10,run,4,1:00,20\nA,7,1,10,run,1,1:00,\nA,8,1,10,run,4,1:00,\nA,9,1,10,run,,1:00,\n");

        Assert.Equal(["two minute", "normal", "two minute", "four minute", "normal", "normal", "normal", "", ""], Words(log, ColumnNames.ClockState));
    }

    [Fact]
    public void SuddenChange_OneOffenseCharted_StaysUncharted()
    {
        var log = ChartText.Plays("game,play,offense,down,distance,call,series\nA,1,X,1,10,run,1\n");

        Assert.Equal([""], Words(log, ColumnNames.SuddenChange));
    }

    [Fact]
    public void SuddenChange_AfterTakeaway_MarksTheSeries()
    {
        var log = ChartText.Plays(
            "game,play,offense,down,distance,call,series,result,gain\nA,1,X,1,10,pass,1,interception,0\nA,2,Y,1,10,run,2,rush,3\nA,3,Y,4,7,run,2,rush,3\nA,4,X,1,10,run,3,rush,3\nA,5,X,2,7,run,3,rush,9\nA,6,Y,1,10,run,4,rush,3\n");

        Assert.Equal(["no", "yes", "yes", "yes", "yes", "no"], Words(log, ColumnNames.SuddenChange));
    }

    private static IEnumerable<string> Words(PlayLog log, string name) =>
        Enumerable.Range(0, log.Rows).Select(row => log.Category(name)[row]);
}
