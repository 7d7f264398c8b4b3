using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.Sheets;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Infra;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Tests.Pages.Sheets;

public class SidelineSheetTests
{
    private static readonly DateTimeOffset s_dated = new(2026, 11, 21, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Compose_FiveGames_ReadsAsBefore() => Golden.Check("Pages", "sideline-sheet", BlockText.Of(Compose(SheetStudies.FiveGames)));

    // What to expect of all plays: half a run in one play more, 15.5 of 20. Wilson at 95 % by hand: 15 of 19 runs is 0.567–0.915, all above a half; 13 of 19 is 0.460–0.846, which holds it.
    [Theory]
    [InlineData(15, 4, "run 78", "15/19, 57–91", CallTone.SureRun)]
    [InlineData(4, 15, "pass 78", "15/19, 57–91", CallTone.SurePass)]
    [InlineData(13, 6, "run 68", "13/19, 46–85", CallTone.Even)]
    [InlineData(6, 6, "even 50", "6/12, 25–75", CallTone.Even)]
    [InlineData(4, 0, "run 4 of 4", "", CallTone.TooFew)]
    [InlineData(1, 2, "pass 2 of 3", "", CallTone.TooFew)]
    public void CallCell_RunsAndPasses_IsSureOnlyWhenTheRangeLeavesOutAHalf(int runs, int passes, string call, string under, CallTone tone)
    {
        var rows = Enumerable.Repeat("run", runs).Concat(Enumerable.Repeat("pass", passes)).Select((word, i) => $"A,{i + 1},1,10,{word}");
        var study = Studies.Of("game,play,down,distance,call\n" + string.Join('\n', rows) + "\n");

        Assert.Equal(new CallCell(call, under, tone), CallCells.Of(study));
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Print_FiveGames_IsFrontAndBackWithoutAFault(PaperSize paper) => AssertPrints(SheetStudies.FiveGames, paper, pages: 2);

    [Fact]
    public void Print_RequiredColumnsOnly_IsOneSheetWithoutAFault() =>
        AssertPrints(SheetStudies.Of(Studies.Keeping(column => column is "game" or "play" or "down" or "distance" or "call")), PaperSize.Letter, pages: 1);

    [Fact]
    public void Print_LongWords_KeepsTheSituationsOnOneSide()
    {
        var study = SheetStudies.Of(Studies.Changed((header, cell) => header is "formation" or "pass_concept" && cell.Length > 0 ? $"{cell} with the long name that a staff gave it" : cell));

        AssertPrints(study, PaperSize.Letter, pages: 2);
    }

    [Fact]
    public void Compose_EveryCell_CountsWhatTheChartsHold()
    {
        var study = SheetStudies.FiveGames;
        var table = Compose(study).Pages.First().Blocks.OfType<Table>().Single();

        var row = table.Rows.Single(r => CellText.Of(r.Cells[0]) == "*3rd 7+*");

        var plays = study.Plays;
        var (downs, distances, calls, backs) = (plays.Category(ColumnNames.Down), plays.Number(ColumnNames.Distance), plays.Category(ColumnNames.Call), plays.Category(ColumnNames.BackSide));
        var there = Enumerable.Range(0, plays.Rows).Where(i => downs[i] == "3" && distances[i] >= 7 && calls[i] is "run" or "pass" && downs[i] == "3" && distances[i] >= 7).ToArray();
        Assert.StartsWith($"{there.Count(i => calls[i] == "pass")}/{there.Length},", ((CallCell)row.Cells[1]).Under, StringComparison.Ordinal);
        var weak = there.Where(i => backs[i] == "weak").ToArray();
        Assert.StartsWith($"{weak.Count(i => calls[i] == "pass")}/{weak.Length},", ((CallCell)row.Cells[2]).Under, StringComparison.Ordinal);
    }

    private static ScoutingBooklet Compose(Study study) => SidelineSheet.Compose(study, SheetStudies.Options, s_dated);

    private static void AssertPrints(Study study, PaperSize paper, int pages)
    {
        using var stream = new MemoryStream();
        var printed = PdfPrinter.Print(Compose(study), paper, stream);

        Assert.Equal(pages, printed.Pages);
        Assert.DoesNotContain(PdfCheck.Inspect(stream).Findings, finding => finding.Fault is not PageFault.HalfEmpty);
    }
}
