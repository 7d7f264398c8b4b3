using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Charts.Corrections;

public class CorrectionsTests
{
    private const string Chart = "game,play,dn,distance,call,gain\nNorth,1,1,10,run,4\nNorth,2,7,6,pass,-3\nNorth,3,3,6,pass,\n";

    [Fact]
    public void Read_AcceptedCorrections_AreAppliedByHeaderOrName()
    {
        var read = Corrected("file,line,column,old,new\nchart.csv,3,dn,7,2\nchart.csv,3,gain,-3,3\nchart.csv,4,gain,,11\nchart.csv,2,down,1,2\n");

        Assert.Equal((3, 3), (read.RowsRead, read.Plays.Rows));
        Assert.Equal(["2", "2", "3"], Enumerable.Range(0, 3).Select(row => read.Plays.Category(ColumnNames.Down)[row]));
        Assert.Equal([4, 3, 11], Enumerable.Range(0, 3).Select(row => read.Plays.Number(ColumnNames.Gain)[row]));
        Assert.Equal(["T022", "T022", "T022", "T022"], read.Problems.Select(problem => problem.Rule.Code));
    }

    [Theory]
    [InlineData("chart.csv,3,dn,6,2", "the cell holds '7'")]
    [InlineData("chart.csv,9,dn,7,2", "no row there")]
    [InlineData("chart.csv,1,dn,dn,2", "no row there")]
    [InlineData("chart.csv,3,hash,,L", "no column 'hash'")]
    [InlineData("other.csv,3,dn,7,2", "no chart of that name")]
    public void Read_CorrectionThatDoesNotFit_IsReportedAndNotApplied(string correction, string why)
    {
        var read = Corrected("file,line,column,old,new\n" + correction + "\n");

        Assert.Equal(2, read.Plays.Rows);
        Assert.Contains(why, Assert.Single(read.Problems, problem => problem.Rule.Code == "T021").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ColumnAccepted_ChoosesTheCorrections()
    {
        var corrections = Read("file;line;column;old;new;accepted\nchart.csv;3;dn;7;2;yes\nchart.csv;2;dn;1;2;\nchart.csv;4;dn;3;4;no\n", []);
        Assert.Equal([new Correction("chart.csv", 3, "dn", "7", "2")], corrections);
    }

    [Fact]
    public void Read_CorrectionsWithoutAColumn_AreRefusedWithTheColumn()
    {
        var problems = new List<Problem>();
        Assert.Empty(Read("file,line,column,new\nchart.csv,3,dn,2\n", problems));
        Assert.Equal("old", Assert.Single(problems).Place.Column);
    }

    [Fact]
    public void Read_TextBehindAnApostrophe_IsTheTextAgain() =>
        Assert.Equal("-x", Assert.Single(Read("file,line,column,old,new\nchart.csv,3,note,'-x,'y\n", [])).Old);

    private static ReadLog Corrected(string corrections)
    {
        var week = WeekPlan.Default with { Headers = new Dictionary<string, string> { ["down"] = "dn" } };
        var options = new ReadingOptions { Corrections = Read(corrections, []) };
        return ChartReader.Read([new ChartSource("chart.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(Chart)))], week, Glossary.BuiltIn, options);
    }

    private static IReadOnlyList<Correction> Read(string text, ICollection<Problem> problems) =>
        CorrectionsReader.Read(new ChartSource("corrections.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(text))), problems);
}
