using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Weeks;
using Tendency.Tests.Shared;

namespace Tendency.Breakdown.Tests.Charts;

/// <summary>Small charts as staffs send them (AsSent/): what is read of each, and what is said about it.</summary>
public class AsSentTests
{
    [Theory]
    // file, plays, rows read = used + left out + set aside, rules met with their lines
    [InlineData("semicolon-bom-crlf.csv", "1 run 1&10 +3 own 25 | 2 pass 2&7 -2 own 28", "2=2+0+0", "")]
    [InlineData("tab-utf16.tsv", "1 run 1&10 | 2 pass 2&7", "2=2+0+0", "T007:0")]
    [InlineData("utf16-no-mark.csv", "1 run 1&10 | 2 pass 2&8", "2=2+0+0", "T007:0")]
    [InlineData("windows-1252.csv", "1 run 1&10 | 2 run 2&1", "2=2+0+0", "T007:0")]
    [InlineData("printed-sheet.csv", "1 run 1&10 +4 | 2 pass 2&6 +7 | 3 run 1&10 +2", "6=3+3+0", "T008:1 T006:8 T010:10 T010:11")]
    [InlineData("unclosed-quote.csv", "1 run 1&10 +4 | 2 pass 2&6 +7 | 3 run 1&10 +1 | 4 pass 2&9 +0 | 5 pass 3&9 +12", "5=5+0+0", "T009:4")]
    [InlineData("ragged.csv", "1 run 1&10 +4 | 2 pass 2&6 | 3 pass 3&6 +11", "3=3+0+0", "T011:2 T005:3")]
    [InlineData("header-comma-rows-semicolon.csv", "1 run 1&10 | 2 pass 2&7 | 3 pass 3&7", "3=3+0+0", "T013:1")]
    [InlineData("spreadsheet-damage.csv", "1 run 1&10 own 25 | 3 pass 3&7 opp 47 | 4 run 4&2 opp 3", "4=3+0+1", "T017:4 T105:2 T105:3 T105:4")]
    [InlineData("invisible-marks.csv", "1 run 1&10 -3 | 2 pass 2&13 +9", "2=2+0+0", "T014:2")]
    [InlineData("both-teams.csv", "1 run 1&10 | 2 pass 1&10 | 1 run 1&10", "6=3+0+3", "T012:5 T012:6 T102:7")]
    [InlineData("sep-line.csv", "1 run 1&10", "1=1+0+0", "T008:1")]
    [InlineData("workbook.xlsx", "1 run 1&10 +4 own 25 | 2 pass 2&6 +0 own 29 | 3 run 3&6 opp 35", "3=3+0+0", "T105:0 T015:0 T016:4 T008:1 T017:6 T105:5")]
    [InlineData("empty.csv", "", "0=0+0+0", "T001:0")]
    [InlineData("not-a-chart.csv", "", "0=0+0+0", "T001:0")]
    public void Read_ChartAsSent_GivesPlaysRowsAndNotes(string file, string plays, string rows, string rules)
    {
        var read = Read(file);

        Assert.Equal(plays, string.Join(" | ", Enumerable.Range(0, read.Plays.Rows).Select(row => Play(read.Plays, row))));
        Assert.Equal(rows, $"{read.RowsRead}={read.Plays.Rows}+{read.RowsLeftOut}+{read.RowsSetAside}");
        Assert.Equal(rules, string.Join(' ', read.Problems.Select(problem => $"{problem.Rule.Code}:{problem.Place.Line}")));
    }

    [Fact]
    public void Read_Windows1252_KeepsAccents() => Assert.Equal("José late – again", Read("windows-1252.csv").Plays.Text(ColumnNames.Note, 0));

    [Fact]
    public void Read_Utf16_KeepsAccents() => Assert.Equal("José", Read("tab-utf16.tsv").Plays.Text(ColumnNames.Note, 0));

    [Fact]
    public void Read_QuotedLineBreaks_StayInTheCellAroundAnUnclosedQuote()
    {
        var log = Read("unclosed-quote.csv").Plays;
        Assert.Equal(["two\nlines", "late", "fine", "says \"go\"", "again\ntwo lines"], Enumerable.Range(0, 5).Select(row => log.Text(ColumnNames.Note, row)));
        Assert.Equal([2, 4, 5, 6, 7], Enumerable.Range(0, 5).Select(row => log.Number(ColumnNames.SourceLine)[row]));
    }

    [Fact]
    public void Read_CommasInALastNote_BelongToTheNote() => Assert.Equal("ran hot, late, left", Read("ragged.csv").Plays.Text(ColumnNames.Note, 0));

    [Fact]
    public void Read_OwnHeaders_AreSuggestedThenMapped()
    {
        var unmapped = Read("own-headers-cr.csv");
        Assert.Equal(
            "Dn=down Dist=distance R/P=call No=play Opp Team= Frmation=formation",
            string.Join(' ', unmapped.Problems.Where(p => p.Rule.Code == "T003").Select(p => $"{p.Value}={p.Suggestion}")));
        Assert.Equal((0, 2), (unmapped.Plays.Rows, unmapped.RowsSetAside));

        var week = WeekPlan.Default with
        {
            Headers = new Dictionary<string, string> { ["down"] = "Dn", ["distance"] = "Dist", ["call"] = "R/P", ["play"] = "No", ["game"] = "opp team", ["formation"] = "Frmation" },
        };
        var mapped = Read("own-headers-cr.csv", week);
        Assert.Equal("1 run 1&10 +4 | 2 pass 2&6 +0", string.Join(" | ", Enumerable.Range(0, 2).Select(row => Play(mapped.Plays, row))));
        Assert.Equal(["T004"], mapped.Problems.Select(p => p.Rule.Code));
        Assert.Equal([2, 3], Enumerable.Range(0, 2).Select(row => mapped.Plays.Number(ColumnNames.SourceLine)[row]));
    }

    [Fact]
    public void Read_DamagedCells_AreNotReadAndSayWhatTheyWere()
    {
        var read = Read("spreadsheet-damage.csv");
        Assert.Equal(
            "personnel 11-Dec 12-11 or 11-12; distance 10-Jan 1-10 or 10-1",
            string.Join("; ", read.Problems.Where(p => p.Rule.Code == "T105" && p.Place.Line is 2 or 3).Select(p => $"{p.Place.Column} {p.Value} {p.Suggestion}")));
        Assert.Equal(["", "", "01"], Enumerable.Range(0, 3).Select(row => read.Plays.Category(ColumnNames.Personnel)[row]));
        Assert.Equal([0, 462, 42], Enumerable.Range(0, 3).Select(row => read.Plays.Number(ColumnNames.Clock)[row]));
    }

    [Fact]
    public void Read_Workbook_ReadsTimesNumbersMergedCellsAndANamedSheet()
    {
        var log = Read("workbook.xlsx").Plays;
        Assert.Equal([462, 462, 900], Enumerable.Range(0, 3).Select(row => log.Number(ColumnNames.Clock)[row]));
        Assert.Equal(["11", "", "01"], Enumerable.Range(0, 3).Select(row => log.Category(ColumnNames.Personnel)[row]));
        Assert.Equal(["North", "North", "North"], Enumerable.Range(0, 3).Select(row => log.Category(ColumnNames.Game)[row]));

        var old = Read("workbook.xlsx", options: new ReadingOptions { SheetName = "old" });
        Assert.Equal("1 pass 1&10", Play(old.Plays, 0));
        var none = Read("workbook.xlsx", options: new ReadingOptions { SheetName = "Week 8" });
        Assert.Contains("its sheets are Chart, Old", Assert.Single(none.Problems, p => p.Rule.Code == "T001").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SameGameInTwoFiles_IsNoted()
    {
        var read = ChartReader.Read([Source("sep-line.csv"), Source("both-teams.csv")], WeekPlan.Default, Glossary.BuiltIn);
        Assert.Contains("sep-line.csv (1 snaps), both-teams.csv (2 snaps)", Assert.Single(read.Problems, p => p.Rule.Code == "T018").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WeekLabel_ReplacesTheGameOfAFileOfOneGameOnly()
    {
        var week = WeekPlan.Default with { Charts = [new WeekChart("sep-line.csv", "Opener", null, []), new WeekChart("both-teams.csv", "Opener", null, [])] };
        Assert.Equal("Opener", Read("sep-line.csv", week).Plays.Category(ColumnNames.Game)[0]);
        Assert.Equal("North", Read("both-teams.csv", week).Plays.Category(ColumnNames.Game)[0]);
    }

    private static ReadLog Read(string file, WeekPlan? week = null, ReadingOptions? options = null) =>
        ChartReader.Read([Source(file)], week ?? WeekPlan.Default, Glossary.BuiltIn, options);

    private static ChartSource Source(string file) => new(file, () => File.OpenRead(Path.Combine(Checkout.Root, "tests", "Tendency.Breakdown.Tests", "Charts", "AsSent", file)));

    private static string Play(PlayLog log, int row)
    {
        var gain = log.Number(ColumnNames.Gain)[row] is int yards ? $" {(yards < 0 ? "" : "+")}{yards}" : "";
        var line = log.Category(ColumnNames.BallOn)[row] is { Length: > 0 } ball ? $" {ball}" : "";
        return $"{log.Number(ColumnNames.Play)[row]} {log.Category(ColumnNames.Call)[row]} {log.Category(ColumnNames.Down)[row]}&{log.Number(ColumnNames.Distance)[row]}{gain}{line}";
    }
}
