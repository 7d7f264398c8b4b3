using System.Text.RegularExpressions;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.Defenses;
using Tendency.Booklet.Tests.Infra;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Booklet.Tests.Pages;

/// <summary>The five games from the other side: the snaps a defense faced, its fronts, coverages and rushes.</summary>
public class DefenseOrderTests
{
    private static readonly Study s_study = Studies.Of(WeekPlan.Default, Unit.Defense,
        [.. Studies.Files().Select(chart => Studies.Rewrite(chart, (header, cell) => header switch { "offense" => cell.Length > 0 ? "Calder Bay" : "", "defense" => "Port Halden", _ => cell }, _ => true))]);

    private static readonly ScoutingBooklet s_booklet = BookletOrder.Compose(s_study, DateTimeOffset.UnixEpoch);

    public static TheoryData<string> Anchors => [.. s_booklet.Pages.Select(page => page.Anchor).Where(anchor => anchor != "reading")];

    [Theory]
    [MemberData(nameof(Anchors))]
    public void Compose_Defense_SaysWhatTheGoldenSays(string anchor) =>
        Golden.Check("Pages", $"defense-{anchor}", BlockText.Of(s_booklet.Pages.Single(page => page.Anchor == anchor)));

    [Fact]
    public void Compose_Defense_HasItsOwnPagesAndSaysNothingOfAnOffensesCalls()
    {
        Assert.Equal(["brief", "down-distance", "formation", "personnel", "fronts", "coverages", "rush", "reading"], s_booklet.Pages.Select(page => page.Anchor));
        var text = string.Concat(s_booklet.Pages.Where(page => page.Anchor != "reading").Select(BlockText.Of));
        Assert.Empty(Regex.Matches(text, "they run|they throw|Top runs|Top passes|team run rate", RegexOptions.IgnoreCase).Select(match => match.Value));
    }

    [Fact]
    public void Plays_FiveOrMoreRush_CountsWhatTheChartSays()
    {
        var rushers = s_study.Plays.Number(ColumnNames.Rushers);
        var charted = Enumerable.Range(0, s_study.Plays.Rows).Select(row => rushers[row]).OfType<int>().ToArray();
        var share = ExtraRush.Of(s_study, ExtraRush.Plays(s_study));

        Assert.Equal((charted.Count(men => men >= 5), charted.Length), (share.Count, share.Plays));
    }
}
