using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.SelfScouts;

/// <summary>Where are we most readable?</summary>
internal static class OwnReadabilityPage
{
    private const int MostRows = 5;

    private static readonly (string Name, string Column)[] s_kinds =
    [
        ("By down and distance", ColumnNames.DownDistance), ("By formation", ColumnNames.Formation), ("By the back's set", ColumnNames.BackSet),
        ("By field zone", ColumnNames.FieldZone), ("By motion", ColumnNames.Motion),
    ];

    public static Page? Compose(Study study)
    {
        if (study.Guess is not { Rows.Count: > 0 } guess)
        {
            return null;
        }

        var guessed = new Guessed(study, guess);
        return new Page("own-readability", "Where we are readable", GuessFinding.Of(study, guessed, s_kinds.Select(kind => kind.Column), ours: true))
        {
            Deck = Words.Sentences("Every play was guessed from our other games only.", guess.Start, "Doubt gone: how much less open the call is than to one who knows only how often we run."),
            Blocks =
            [
                new Heading("How many of our calls are guessed right", "line: down and distance alone"),
                GuessTables.Models(guessed, "All we show"),
                new Heading("Where we are most readable", "most doubt gone first, few plays leaning on all; at least eight plays"),
                GuessTables.Where(study, guessed, s_kinds, MostRows),
            ],
        };
    }
}
