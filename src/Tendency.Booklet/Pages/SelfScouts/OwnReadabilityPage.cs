using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages.SelfScouts;

/// <summary>Where are we most readable?</summary>
internal static class OwnReadabilityPage
{
    private const int MostRows = 5;

    public static Page? Compose(Study study)
    {
        if (study.Guess is not { Rows.Count: > 0 } guess)
        {
            return null;
        }

        var usual = guess.Rows[0].Accuracy;
        var all = guess.Rows[^1];
        return new Page("own-readability", "Where we are readable", Headline.Of(
            $"{Figures.Percent(all.Accuracy)} of our calls can be guessed before the snap, {Figures.Percent(usual)} without looking."))
        {
            Deck = "Every play was guessed from our other games only. Doubt gone: how much less open the call is than to one who knows only how often we run; few plays lean on all.",
            Blocks =
            [
                new Table(
                    [
                        new Column("Situation", 0, 140),
                        new Column("Called right", 160, 150) { Axis = StripAxis.Shares($"overall {Figures.Percent(all.Accuracy)}", all.Accuracy) },
                        new Column("Share, likely", 322, 130),
                        new Column("Doubt gone", 460, 56, Align.Right),
                    ],
                    [.. Rows(study, guess, all.Accuracy)]) { Caption = "Where our calls are guessed best" },
            ],
        };
    }

    private static IEnumerable<TableRow> Rows(Study study, GuessReport guess, double overall)
    {
        (string Name, string Column)[] kinds =
        [
            ("By down and distance", ColumnNames.DownDistance), ("By formation", ColumnNames.Formation), ("By the back's set", ColumnNames.BackSet),
            ("By field zone", ColumnNames.FieldZone), ("By motion", ColumnNames.Motion),
        ];
        var guessed = new Guessed(study, guess);
        foreach (var (name, column) in kinds)
        {
            var values = guess.By(study.Plays, column).Where(value => value.BitsExpected > 0).Take(MostRows).ToArray();
            if (values.Length == 0)
            {
                continue;
            }

            yield return TableRow.GroupHead(name);
            foreach (var value in values)
            {
                var right = guessed.Where(value, overall);
                yield return new TableRow(
                    Cells.Name(Words.Title(SituationWords.Of(value.Dimension, value.Value))),
                    Cells.Strip(right),
                    new ShareCell(right) { Form = ShareForm.OneLine },
                    Cells.Figure(Figures.Percent(guess.DoubtGone(value.BitsExpected))));
            }
        }
    }
}
