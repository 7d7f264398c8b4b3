using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Tests.Charts;

public class ChartReaderTests
{
    [Fact]
    public void Read_RowWithoutRequiredCell_IsSetAsideWithPlace()
    {
        var read = ChartText.Read("game,play,down,distance,call,ball_on\nA,1,1,10,run,own 25\nA,2,7,6,pass,own 29\nA,3,,goal,pass,\nA,4,2,goal,run,opp 4\n");

        Assert.Equal(4, read.RowsRead);
        Assert.Equal(2, read.RowsSetAside);
        Assert.Equal(2, read.Plays.Rows);
        Assert.Contains(read.Problems, p => p.Rule.Code == "T102" && p.Place is { File: "chart.csv", Line: 3, Column: "down" } && p.Value == "7");
        Assert.Equal(4, read.Plays.Number(ColumnNames.Distance)[1]);
    }

    [Fact]
    public void Read_UnreadableOptionalCell_CostsTheCellOnly()
    {
        var read = ChartText.Read("game,play,down,distance,call,gain,Run Scheme\nA,1,1,10,run,x,IZ\nA,2,2,6,run,-3,inside_zone\n");

        Assert.Equal(2, read.Plays.Rows);
        Assert.Null(read.Plays.Number(ColumnNames.Gain)[0]);
        Assert.Equal(-3, read.Plays.Number(ColumnNames.Gain)[1]);
        Assert.Equal("inside zone", read.Plays.Category(ColumnNames.RunScheme)[0]);
        Assert.Equal("inside zone", read.Plays.Category(ColumnNames.RunScheme)[1]);
        Assert.Single(read.Problems, p => p.Rule.Code == "T101");
    }

    [Fact]
    public void Read_SpellingsOfAFormation_ArePrintedAsMostOftenSpelt()
    {
        var log = ChartText.Plays("game;play;down;distance;call;formation\nA;1;1;10;run;Trips\nA;2;2;6;run;TRIPS\nA;3;3;1;run;Trips\n");

        Assert.Equal(["Trips", "Trips", "Trips"], Enumerable.Range(0, 3).Select(row => log.Category(ColumnNames.Formation)[row]));
        Assert.Equal("trips 3x1", log.Category(ColumnNames.FormationFamily)[0]);
    }

    [Fact]
    public void Read_BackSideWithoutStrength_IsNotedOnceAFile()
    {
        var read = ChartText.Read("game,play,down,distance,call,back_side,strength\nA,1,1,10,run,L,\nA,2,2,6,run,R,L\nA,3,3,1,run,weak,\nA,4,4,1,run,R,\n");

        var note = Assert.Single(read.Problems);
        Assert.Equal(("T104", 2, "2"), (note.Rule.Code, note.Place.Line, note.Value));
    }
}
