using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.Cards;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Tests.Pages.Cards;

public class FrontCardsPageTests
{
    private const double FirstSheet = 738 - 126; // below two lines of headline and one of deck

    public static TheoryData<string> Fronts => [.. FrontBook.BuiltIn.Fronts.Select(front => front.Name)];

    [Theory]
    [MemberData(nameof(Fronts))]
    public void Compose_WidestSurface_EveryCardGoesOnASheet(string front)
    {
        // Tight ends on both sides and a wing: the most gaps a ledger can list, against the runs that make most of them.
        var runs = string.Concat(new[] { "arc read", "qb counter", "triple option" }.SelectMany((scheme, s) =>
            Enumerable.Range(1, 6).Select(i => $"A,{(s * 6) + i},1,10,run,{scheme},R,weak,both,R,12,gun,C,4\n")));
        var page = Compose(WithAllFronts(Studies.Of("game,play,down,distance,call,run_scheme,run_side,back_side,attached,wing,personnel,back_set,gap,gain\n" + runs)), front);

        var heights = page!.Blocks.Select(card => new BlockSetter(new Letters()).Flow([card], 516).Height).ToArray();
        Assert.Equal(3, heights.Length);
        Assert.All(heights, height => Assert.InRange(height, 300, FirstSheet));
    }

    [Fact]
    public void Compose_FiveGames_CountsHitsAsTheChartsDo()
    {
        var study = Studies.FiveGames;
        var page = FrontCardsPage.Compose(study, FrontCardsPage.First)!;
        var card = (Together)page.Blocks[0];
        var hits = card.Blocks.OfType<Table>().First().Rows.SelectMany(row => row.Cells.OfType<StripCell>()).Select(cell => (cell.Share.Count, cell.Share.Plays)).ToArray();

        // Recounted cell by cell, without the counting code.
        string Word(string column, int row) => study.Plays.Category(column)[row];
        var gaps = Enumerable.Range(0, study.Plays.Rows)
            .Where(row => Word(ColumnNames.RunScheme, row) == "inside zone" && Word(ColumnNames.RunTo, row) == "away" && Word(ColumnNames.Gap, row).Length > 0
                && (Word(ColumnNames.Call, row) == "run" || Word(ColumnNames.Called, row) == "rpo"))
            .Select(row => Word(ColumnNames.Gap, row)).ToArray();
        Assert.StartsWith("Inside zone away", card.Blocks.OfType<Heading>().First().Title, StringComparison.Ordinal);
        Assert.Equal((gaps.Count(gap => gap == "A"), gaps.Length), hits[0]);
        Assert.Equal((gaps.Count(gap => gap == "B"), gaps.Length), hits[1]);
    }

    [Fact]
    public void Compose_RunsWithoutSideOrSurface_DrawsTheBackBehindAndSaysWhatIsTaken()
    {
        var runs = string.Concat(Enumerable.Range(1, 6).Select(i => $"A,{i},1,10,run,power,4\n"));
        var text = BlockText.Of(Compose(WithAllFronts(Studies.Of("game,play,down,distance,call,run_scheme,gain\n" + runs)), "over")!);

        Assert.Contains("-- Power | 100% (6 of 6 runs", text, StringComparison.Ordinal);
        Assert.Contains("Surface not charted: one tight end to the play is taken.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("away from the back", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_NoSchemeOnFiveRuns_GivesNoPage()
    {
        var runs = string.Concat(Enumerable.Range(1, 4).Select(i => $"A,{i},1,10,run,power,4\n"));
        Assert.Null(Compose(WithAllFronts(Studies.Of("game,play,down,distance,call,run_scheme,gain\n" + runs)), "over"));
    }

    private static Page? Compose(Study study, string front) =>
        FrontCardsPage.Compose(study, ("front-cards", "Front cards", ranking => ranking.Ranks.FirstOrDefault(rank => rank.Front == front)));

    private static Study WithAllFronts(Study study) =>
        study with { Fronts = FrontCheck.Of(study.Plays, FrontBook.BuiltIn, FrontBook.BuiltIn.Fronts, new FrontOptions { Draws = 50, CardDraws = 10 }) };
}
