using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;

namespace Tendency.Booklet.Tests.Pages;

/// <summary>Games of 60 plays that share a run rate, or do not.</summary>
public sealed class GamesPageTests
{
    [Theory]
    [InlineData("Every game stands apart: no one run share speaks for them all.", 54, 52, 53, 8, 7, 9)]
    [InlineData("Four of six games stand apart from the share of all.", 54, 54, 6, 6, 30, 30)]
    [InlineData("Apart from the rest: G1.", 54, 22, 24, 25, 23, 22)]
    [InlineData("No game's run share stands apart from the rest.", 30, 31, 29, 30, 31, 29)]
    public void Finding_SoManyGamesApart_IsSaidSo(string said, params int[] runsOfSixty)
    {
        var study = Studies.Of([.. runsOfSixty.Select((runs, game) => "game,play,down,distance,call\n"
            + string.Concat(Enumerable.Range(1, 60).Select(play => $"G{game + 1},{play},1,10,{(play <= runs ? "run" : "pass")}\n")))]);

        Assert.Contains(said, BlockText.Of(BookletOrder.Compose(study, DateTimeOffset.UnixEpoch, ["games"]).Pages.Single()).Split('\n')[1], StringComparison.Ordinal);
    }
}
