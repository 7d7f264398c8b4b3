using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Tests.Pages;
using Tendency.Booklet.Tests.Pages.Sheets;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Tests.Blocks;

public class CutUpTests
{
    private static readonly IReadOnlyList<CutUp> s_cuts = CutUp.Of(BookletOrder.Compose(SheetStudies.FiveGames, new DateTimeOffset(2026, 11, 21, 0, 0, 0, TimeSpan.Zero)));

    [Fact]
    public void Of_Booklet_ListsRealPlaysWithTheirClips()
    {
        var plays = SheetStudies.FiveGames.All;
        var clips = Enumerable.Range(0, plays.Rows).ToDictionary(row => (plays.Category(ColumnNames.Game)[row], plays.Number(ColumnNames.Play)[row] ?? 0), row => plays.Text(ColumnNames.Clip, row));

        Assert.All(s_cuts.SelectMany(cut => cut.Plays), play => Assert.Equal(clips[(play.Game, play.Play)], play.Clip));
    }

    [Fact]
    public void Of_Booklet_HasEveryTellAndTheMainCells()
    {
        var tells = s_cuts.Where(cut => cut.Page == "tells").ToArray();
        Assert.NotEmpty(tells);
        Assert.Contains(tells, cut => cut.Name.Contains("they ", StringComparison.Ordinal));
        var third = Assert.Single(s_cuts, cut => cut.Page == "down-distance" && cut.Name.StartsWith("3rd long", StringComparison.Ordinal));
        Assert.Equal(Studies.FiveGames.Plays.Where(ColumnNames.DownDistance, "3 & long", "3 & extra long").Rows, third.Plays.Count);
    }

    [Fact]
    public void Of_Booklet_PutsTheNewestGameFirst()
    {
        var games = SheetStudies.FiveGames.Games.ToList();

        Assert.All(s_cuts, cut => Assert.Equal(cut.Plays.OrderByDescending(play => games.IndexOf(play.Game)).ThenBy(play => play.Play), cut.Plays));
    }
}
