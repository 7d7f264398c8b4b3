using System.Text.RegularExpressions;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.Wording;
using Tendency.Booklet.Tests.Infra;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Tests.Pages;

public class BookletOrderTests
{
    private static readonly ScoutingBooklet s_fiveGames = BookletOrder.Compose(Studies.FiveGames, DateTimeOffset.UnixEpoch);

    public static TheoryData<string> Anchors => [.. s_fiveGames.Pages.Select(page => page.Anchor)];

    public static TheoryData<string> Shapes => [.. s_shapes.Keys];

    private static readonly Dictionary<string, Func<Study>> s_shapes = new()
    {
        ["five games"] = () => Studies.FiveGames,
        ["one game"] = () => Studies.WithFindings(Studies.Games(1)),
        ["twelve games"] = () => Studies.Games(12),
        ["required columns only"] = () => Studies.WithFindings(Studies.Keeping(name => name is "game" or "play" or "down" or "distance" or "call")),
        ["no runs"] = () => Studies.Changed((header, cell) => header == "call" && cell is "run" or "rpo" ? "none" : cell),
        ["no passes"] = () => Studies.Changed((header, cell) => header == "call" && cell is "pass" or "rpo" ? "none" : cell),
        ["a word a play"] = () => EveryWordNew(["formation", "pass_concept", "run_scheme"]),
        ["long words"] = () => Studies.Changed((header, cell) => header is "formation" or "run_scheme" or "pass_concept" or "game" && cell.Length > 0 ? $"{cell} with a very long name that nobody would say twice é ñ 漢字" : cell),
        ["three plays"] = () => Studies.WithFindings(Studies.Of("game,play,down,distance,call,formation,back_side,run_scheme,ball_on,gain\nA,1,1,10,run,trips,weak,power,own 20,4\nA,2,2,6,pass,trips,weak,,own 24,0\nA,3,3,6,pass,trips,weak,,opp 9,9\n")),
        ["only one call"] = () => Studies.Of("game,play,down,distance,call\n" + string.Concat(Enumerable.Range(1, 40).Select(i => $"A,{i},1,10,run\n"))),
    };

    private static Study EveryWordNew(string[] headers)
    {
        var count = 0;
        return Studies.Changed((header, cell) => headers.Contains(header) && cell.Length > 0 ? $"{cell} {++count}" : cell);
    }

    [Theory]
    [MemberData(nameof(Anchors))]
    public void Compose_FiveGames_SaysWhatTheGoldenSays(string anchor) =>
        Golden.Check("Pages", anchor, BlockText.Of(s_fiveGames.Pages.Single(page => page.Anchor == anchor)));

    [Fact]
    public void Compose_FiveGames_HasEveryPageOfTheList() =>
        Assert.Equal(
            BookletOrder.Pages.Where(entry => entry.Anchor is not ("tries" or "audit") && entry.IsWanted(Studies.FiveGames)).Select(entry => (entry.Anchor, entry.Name)),
            s_fiveGames.Pages.Select(page => (page.Anchor, page.Name)));

    [Fact]
    public void Compose_RequiredColumnsOnly_NamesThePagesLeftOutAndTheirColumns()
    {
        var booklet = BookletOrder.Compose(s_shapes["required columns only"](), DateTimeOffset.UnixEpoch);

        Assert.DoesNotContain(booklet.Pages, page => page.Anchor is "formation" or "personnel" or "back-side" or "run-game" or "pass-game" or "red-zone");
        var last = BlockText.Of(booklet.Pages.Single(page => page.Anchor == "reading"));
        Assert.All(
            BookletOrder.Pages.Where(entry => entry.Needs.Count > 0),
            entry => Assert.Contains($"{entry.Name}: {Words.Join(entry.Needs)} not charted", last, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Compose_AnyShape_KeepsThePrintingRules(string shape)
    {
        var booklet = BookletOrder.Compose(s_shapes[shape](), DateTimeOffset.UnixEpoch);
        var text = BlockText.Of(booklet);

        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("no no", text, StringComparison.Ordinal);
        Assert.All(booklet.Pages, page => Assert.NotEmpty(page.Blocks));
        Assert.Equal(booklet.Pages.Count(), booklet.Pages.Select(page => page.Anchor).Distinct().Count());
        Assert.All(
            booklet.Pages.Where(page => page.Kind == PageKind.Inside && shape != "long words"),
            page => Assert.True(page.Headline.Length > 0 && HeadlineType.Fits(page.Headline), $"{page.Anchor}: {page.Headline}"));

        // Under five plays there is never a percent before the count.
        Assert.Empty(Regex.Matches(text, @"\d%\*? \(?\d of [1-4]\b").Select(match => match.Value));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Compose_AnyShape_BriefClaimsPassTheDotTest(string shape)
    {
        var brief = BookletOrder.Compose(s_shapes[shape](), DateTimeOffset.UnixEpoch).Pages.First();
        var claims = brief.Blocks.OfType<EvidenceList>().SelectMany(list => list.Claims).ToArray();

        Assert.All(claims, claim => Assert.True(claim.Share.Differs && claim.Share.Value > claim.Share.Baseline, claim.Claim));
        Assert.True(claims.Length <= 5);
        Assert.True(claims.Length > 0 || brief.Blocks.OfType<Paragraph>().Any(p => p.Text.ToString().StartsWith("No habit stands out", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Compose_AnyShape_LinksOnlyToPagesThatStand(string shape)
    {
        var booklet = BookletOrder.Compose(s_shapes[shape](), DateTimeOffset.UnixEpoch);
        var anchors = booklet.Pages.Select(page => page.Anchor).ToHashSet();
        var links = Regex.Matches(BlockText.Of(booklet), @"Page \[([a-z-]+)\]").Select(match => match.Groups[1].Value);

        Assert.All(links, link => Assert.Contains(link, anchors));
    }

    [Fact]
    public void Compose_BackWeak_CountsWhatTheChartSays()
    {
        var plays = Studies.FiveGames.Plays;
        var page = s_fiveGames.Pages.Single(found => found.Anchor == "formation");
        var summary = page.Blocks.OfType<Table>().First();
        var weak = summary.Rows[0].Cells.OfType<StripCell>().Single().Share;

        // Recounted cell by cell, without the counting code.
        var (runs, all) = (0, 0);
        for (var row = 0; row < plays.Rows; row++)
        {
            if (plays.Category(ColumnNames.Formation)[row].Length > 0 && plays.Category(ColumnNames.BackSide)[row] == "weak")
            {
                all++;
                runs += plays.Category(ColumnNames.Call)[row] == "run" ? 1 : 0;
            }
        }

        Assert.Equal((runs, all), (weak.Count, weak.Plays));
    }
}
