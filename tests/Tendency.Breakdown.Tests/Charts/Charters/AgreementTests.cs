using Tendency.Breakdown.Charts.Charters;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Tests.Charts.Charters;

public class AgreementTests
{
    private const string Header = "game,play,down,distance,ball_on,call,gain,hash,formation\n";
    private const string One = Header + "A,1,1,10,own 25,run,4,L,Trips\nA,2,2,6,own 29,pass,0,L,Doubles\nA,3,3,6,own 29,pass,11,R,Trips\nA,4,1,10,own 40,run,2,M,Doubles\nA,5,2,8,own 42,run,3,M,Bunch\n";

    [Fact]
    public void Compare_TheSameChart_AgreesOnEverything()
    {
        var agreement = Agreement.Compare(ChartText.Plays(One), ChartText.Plays(One));

        Assert.Equal(5, agreement.Pairs.Count);
        Assert.Empty(agreement.Disagreements);
        Assert.All(agreement.Columns, column => Assert.Equal((5, 1.0), (column.Plays, column.Share)));
        Assert.Equal(1, agreement.Columns.Single(column => column.Column == ColumnNames.Hash).Kappa);
    }

    [Fact]
    public void Compare_NumbersSlip_PairsSnapsByWhatHappened()
    {
        // The second charter missed the second snap and numbered on, in other capitals, and read one hash otherwise.
        const string Two = Header + "a,1,1,10,own 25,run,4,L,TRIPS\na,2,3,6,own 29,pass,11,L,trips\na,3,1,10,own 40,run,2,M,doubles\na,4,2,8,own 42,run,3,M,bunch\n";
        var agreement = Agreement.Compare(ChartText.Plays(One), ChartText.Plays(Two));

        Assert.Equal([(0, 0), (2, 1), (3, 2), (4, 3)], agreement.Pairs);
        Assert.Equal([1], agreement.OnlyA);
        Assert.Empty(agreement.OnlyB);
        Assert.Equal(new Disagreement(ColumnNames.Hash, 2, 1, "R", "L"), Assert.Single(agreement.Disagreements));
        Assert.Equal(0.75, agreement.Columns.Single(column => column.Column == ColumnNames.Hash).Share);
    }

    // The table [[20, 5], [10, 15]] of two raters: observed 0.7, expected 0.5, kappa 0.4 (worked by hand from Cohen's formula).
    [Fact]
    public void Compare_KnownTable_GivesCohensKappa()
    {
        string Chart(Func<int, string> hash) => "game,play,down,distance,ball_on,call,gain,hash\n" + string.Concat(Enumerable.Range(0, 50).Select(i => $"A,{i + 1},{(i % 4) + 1},{(i % 10) + 1},own {(i % 49) + 1},run,{i},{hash(i)}\n"));
        var agreement = Agreement.Compare(ChartText.Plays(Chart(i => i < 25 ? "L" : "R")), ChartText.Plays(Chart(i => i is < 20 or (>= 25 and < 35) ? "L" : "R")));
        var column = agreement.Columns.Single(c => c.Column == ColumnNames.Hash);

        Assert.Equal(50, column.Plays);
        Assert.Equal(0.7, column.Share, 12);
        Assert.Equal(0.4, column.Kappa!.Value, 12);
        Assert.True(column.Low < 0.4 && column.High > 0.4);
    }

    [Fact]
    public void MergedChart_MarksWhatDiffersAndWhatOneAloneHas()
    {
        const string Two = Header + "A,1,1,10,own 25,run,4,R,Trips\nA,2,2,6,own 29,pass,0,L,Doubles\nA,3,3,6,own 29,pass,11,R,Trips\nA,4,1,10,own 40,run,2,M,Doubles\nA,5,2,8,own 42,run,3,M,Bunch\nA,6,3,5,own 45,pass,20,L,Empty\n";
        var (a, b) = (ChartText.Plays(One), ChartText.Plays(Two));
        var merged = MergedChart.Of(a, b, Agreement.Compare(a, b));
        var note = merged.Headers.ToList().IndexOf(ColumnNames.Note);

        Assert.Equal(6, merged.Rows.Count);
        Assert.Equal(2, merged.Marked);
        Assert.Equal("charts differ: hash: L | R", merged.Rows[0][note]);
        Assert.Equal("only in the second chart", merged.Rows[5][note]);
        Assert.Equal("6", merged.Rows[5][merged.Headers.ToList().IndexOf(ColumnNames.Play)]);
    }
}
