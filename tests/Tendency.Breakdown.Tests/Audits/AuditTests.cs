using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Tests.Audits;

public class AuditTests
{
    private const string Header = "game,play,series,down,distance,ball_on,call,gain,result\n";

    [Fact]
    public void Run_WrongHalfOfTheField_ProposesTheCell()
    {
        var report = AuditedText.Run(Header + "A,1,1,1,10,own 25,run,4,rush\nA,2,1,2,6,opp 29,run,3,rush\nA,3,1,3,3,own 32,pass,0,incomplete\n");

        Assert.Equal(new Correction("chart.csv", 3, "ball_on", "opp 29", "own 29"), Assert.Single(report.ProposedCorrections));
        Assert.Equal(Severity.Error, Assert.Single(report.Problems).Rule.Severity);
    }

    [Fact]
    public void Run_OneCellExplainsTwoBrokenSteps_IsNamedOnce()
    {
        // The spot of play 3 breaks the step to it and the step from it; the gains around are right.
        var report = AuditedText.Run(Header + "A,1,1,1,10,own 25,run,4,rush\nA,2,1,2,6,own 29,run,3,rush\nA,3,1,3,3,own 42,run,5,rush\nA,4,1,1,10,own 37,run,1,rush\n");

        var problem = Assert.Single(report.Problems);
        Assert.Equal(("D103", 4, "ball_on", "own 32"), (problem.Rule.Code, problem.Place.Line, problem.Place.Column, problem.Suggestion));
    }

    [Fact]
    public void Run_SnapLeftOut_IsNoWrongCell()
    {
        var report = AuditedText.Run(Header + "A,1,1,1,10,own 25,run,4,rush\nA,3,1,3,3,own 32,run,5,rush\nA,4,1,1,10,own 37,run,1,rush\n");

        Assert.Equal("D108", Assert.Single(report.Problems).Rule.Code);
        Assert.Empty(report.ProposedCorrections);
    }

    [Fact]
    public void Run_ColumnsNotCharted_AreNamedWithTheRulesNotRun()
    {
        var report = AuditedText.Run("game,play,down,distance,call\nA,1,1,10,run\n");

        Assert.Empty(report.Problems);
        Assert.Contains(report.NotRun, rule => rule.Rule.Code == "D103" && rule.Columns.Contains("ball_on"));
        Assert.StartsWith("1 plays audited: 0 errors, 0 warnings, 0 notes;", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_RowSetAside_IsNotMissedAgainAndItsCellIsProposed()
    {
        var report = AuditedText.Run(Header + "A,1,1,1,10,own 25,run,4,rush\nA,2,1,22,6,own 29,run,3,rush\nA,3,1,3,3,own 32,run,5,rush\nA,4,1,1,10,own 37,run,1,rush\n");

        var problem = Assert.Single(report.Problems);
        Assert.Equal(("T102", 3, "2"), (problem.Rule.Code, problem.Place.Line, problem.Suggestion));
    }

    [Fact]
    public void Run_NoRows_IsQuiet() => Assert.Empty(AuditedText.Run(Header).Problems.Where(problem => problem.Rule.Severity == Severity.Error));

    [Fact]
    public void Write_ManyOfOneRule_ShowsFiveAndTheCount()
    {
        var rows = string.Concat(Enumerable.Range(0, 7).Select(i => $"A,{i + 1},{i + 1},1,10,own 25,pass,{i + 1},incomplete\n"));
        using var text = new StringWriter();
        AuditText.Write(AuditedText.Run(Header + rows), text, "problems.csv");

        var lines = text.ToString().Split('\n');
        Assert.Contains(lines, line => line.StartsWith("ERROR   R107", StringComparison.Ordinal) && line.Contains("(7x)", StringComparison.Ordinal));
        Assert.Equal(5, lines.Count(line => line.Contains("chart.csv:", StringComparison.Ordinal)));
        Assert.Contains("  … and 2 more, all in problems.csv", lines.Select(line => line.TrimEnd()));
    }

    // Work must grow with the rows, not with their square, or this never ends: scrambled rows, one game and many games, with and without series.
    [Theory]
    [InlineData(2_000, 1, false)]
    [InlineData(2_000, 1, true)]
    [InlineData(2_000, 500, true)]
    public void Run_ScrambledChart_Ends(int rows, int games, bool series)
    {
        var chance = new Random(5);
        string One(params string[] words) => words[chance.Next(words.Length)];
        var text = new System.Text.StringBuilder("game,play,series,quarter,clock,margin,down,distance,ball_on,hash,personnel,formation,attached,call,run_scheme,gain,result\n");
        for (var i = 0; i < rows; i++)
        {
            _ = text.Append($"G{i * games / rows},{chance.Next(1, 300)},{(series ? One("1", "2", "3") : "")},{chance.Next(1, 6)},{chance.Next(15)}:{chance.Next(10, 60)},{chance.Next(-9, 9)},{chance.Next(1, 6)},{chance.Next(0, 20)},own {chance.Next(1, 50)},{One("L", "M", "R")},{chance.Next(70)},w{chance.Next(5_000)},{One("L", "R", "both")},{One("run", "pass")},w{chance.Next(5_000)},{chance.Next(-20, 60)},{One("rush", "incomplete", "sack")}\n");
        }

        var report = AuditedText.Run(text.ToString());

        Assert.NotEmpty(report.Problems);
    }
}
