using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.SelfScouts;
using Tendency.Booklet.Tests.Infra;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Tests.Pages.SelfScouts;

public class SelfScoutBookletTests
{
    private static readonly ScoutingBooklet s_booklet = Compose(Studies.FiveGames);

    [Theory]
    [InlineData("change")]
    [InlineData("own-tells")]
    [InlineData("own-fronts")]
    public void Compose_FiveGames_SaysWhatTheGoldenSays(string anchor) =>
        Golden.Check("Pages", anchor, BlockText.Of(s_booklet.Pages.Single(page => page.Anchor == anchor)));

    [Fact]
    public void Compose_RequiredColumnsOnly_StillHasItsFirstPage()
    {
        var booklet = Compose(Studies.Keeping(name => name is "game" or "play" or "down" or "distance" or "call"));

        Assert.Equal("change", booklet.Pages.First().Anchor);
        Assert.DoesNotContain("NaN", BlockText.Of(booklet), StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_NoTells_SaysSo()
    {
        var booklet = Compose(Studies.Of("game,play,down,distance,call\n" + string.Concat(Enumerable.Range(1, 40).Select(i => $"A,{i},1,10,{(i % 2 == 0 ? "run" : "pass")}\n"))));

        Assert.Contains("Nothing on film gives us away.", BlockText.Of(booklet), StringComparison.Ordinal);
        _ = Assert.Single(booklet.Pages);
    }

    [Fact]
    public void Compose_FiveGames_HeadlinesFitTheirLines() =>
        Assert.All(s_booklet.Pages.Skip(1), page => Assert.True(page.Headline.Length > 0 && HeadlineType.Fits(page.Headline), page.Headline));

    private static ScoutingBooklet Compose(Study study) => SelfScoutBooklet.Compose(
        study, SelfScout.Run(study.Chosen, SelfScoutOptions.Default), FilmRow.Of(RunSample.Of(study.Plays, FrontBook.BuiltIn), 0.95), DateTimeOffset.UnixEpoch);
}
