using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;

namespace Tendency.Booklet.Pages.Brief;

/// <summary>What a brief says first when it rests on little film.</summary>
internal static class FewPlays
{
    private const int Few = 100;

    public static IEnumerable<Block> Warning(Study study)
    {
        if (study.Plays.Rows < Few)
        {
            yield return Paragraph.Call(RichText.Strong($"{Words.Figured(study.Plays.Rows, "play")}. Read the ranges, not the rates."));
        }
        else if (study.Games.Count == 1)
        {
            yield return Paragraph.Call(RichText.Strong("One game, no spread to show.") + " A different game plan would not show up in these ranges.");
        }
    }
}
