using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.Sheets;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Infra;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Tests.Pages.Sheets;

public class PlayerTipsTests
{
    private static readonly DateTimeOffset s_dated = new(2026, 11, 21, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Compose_FiveGames_ReadsAsBefore() => Golden.Check("Pages", "player-tips", BlockText.Of(Compose(SheetStudies.FiveGames)));

    [Fact]
    public void Compose_FiveGames_IsOnePageOfFiveToEightTipsWithoutAPercent()
    {
        var booklet = Compose(SheetStudies.FiveGames);
        using var stream = new MemoryStream();

        var printed = PdfPrinter.Print(booklet, PaperSize.Letter, stream);

        Assert.Equal(1, printed.Pages);
        var text = BlockText.Of(booklet);
        Assert.DoesNotContain('%', text);
        Assert.InRange(text.Split('→').Length - 1, 5, 8);
    }

    [Fact]
    public void Calls_EveryTip_CountsWhatTheChartsHold()
    {
        var plays = SheetStudies.FiveGames.Plays;
        var calls = plays.Category(ColumnNames.Call);
        var rows = Enumerable.Range(0, plays.Rows).ToLookup(row => (plays.Category(ColumnNames.Game)[row], plays.Number(ColumnNames.Play)[row]));
        var (sure, leans) = Tips.Calls(SheetStudies.FiveGames);

        Assert.NotEmpty(sure);
        Assert.All(sure.Concat(leans), tip =>
        {
            var seen = tip.Plays.Select(key => rows[key].Single()).ToArray();
            Assert.Equal(seen.Count(row => calls[row] == tip.Expect), tip.Share.Count);
            Assert.Equal(seen.Count(row => calls[row] is "run" or "pass"), tip.Share.Plays);
            Assert.True(tip.Share.Likely!.Value.Low > .5, tip.Cue);
        });
    }

    [Fact]
    public void Calls_WingsAlwaysRun_SaysSo()
    {
        // Forty plays: with a wing they run 18 of 20, without one 10 of 20.
        var rows = Enumerable.Range(0, 40).Select(i => $"A,{i + 1},1,10,{(i < 18 || i >= 30 ? "run" : "pass")},{(i < 20 ? "L" : "none")}");
        var study = Studies.Of("game,play,down,distance,call,wing\n" + string.Join('\n', rows) + "\n");

        var (sure, _) = Tips.Calls(study);

        var tip = Assert.Single(sure, tip => tip.Cue == "A wing");
        Assert.Equal(("run", 18, 20), (tip.Expect, tip.Share.Count, tip.Share.Plays));
    }

    [Fact]
    public void Compose_CallsByTheToss_PromisesNothing()
    {
        // Run and pass by turns in every look: nothing to see.
        var rows = Enumerable.Range(0, 80).Select(i => $"A,{i + 1},1,10,{(i % 2 == 0 ? "run" : "pass")},{(i / 2 % 2 == 0 ? "doubles" : "trips")}");
        var study = Studies.Of("game,play,down,distance,call,formation\n" + string.Join('\n', rows) + "\n");

        Assert.Contains("No tip is sure this week: play your keys.", BlockText.Of(Compose(study)), StringComparison.Ordinal);
    }

    private static ScoutingBooklet Compose(Study study) => PlayerTips.Compose(study, s_dated);
}
