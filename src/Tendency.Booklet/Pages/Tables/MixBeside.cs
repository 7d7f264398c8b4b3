using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>One of two mixes beside one another.</summary>
/// <param name="Title">Of the half page: "Drops".</param>
/// <param name="Head">Head of the first column: "Drop".</param>
/// <param name="Column">What is divided.</param>
/// <param name="Passes">The passes divided.</param>
internal sealed record MixSide(string Title, string Head, string Column, PlayLog Passes);

/// <summary>Mixes of passes in half a page each.</summary>
internal static class MixBeside
{
    /// <param name="study">Gives the level and the play lists.</param>
    /// <param name="most">Kinds listed in each.</param>
    /// <param name="sides">One with too few charted passes for a percent is left out.</param>
    /// <returns>Nothing when no side stands.</returns>
    public static IEnumerable<Block> Of(Study study, int most, params MixSide[] sides)
    {
        const double Half = 252;
        var shown = sides.Select(side => (Side: side, Mix: Mix.Of(study, side.Passes, side.Column, most))).Where(side => side.Mix.Plays >= Share.FewestPlays)
            .Select(side => new Side(Half,
            [
                new Heading(side.Side.Title, Words.Figured(side.Mix.Plays, "pass", "passes")),
                MixTable.Of(study, side.Side.Head, side.Side.Column, side.Side.Passes, side.Mix, MixStops.Half),
            ])).ToArray();
        if (shown.Length > 0)
        {
            yield return new SideBySide(shown);
        }
    }
}
