using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>Which fronts, or which coverages, and what did they give up?</summary>
internal static class DefenseMixPage
{
    private const int Most = 10;

    /// <param name="study">The defense's plays.</param>
    /// <param name="column">front or coverage.</param>
    public static Page? Compose(Study study, string column)
    {
        var mix = Mix.Of(study, study.Plays, column, Most);
        if (mix.Plays < Share.FewestPlays)
        {
            return null;
        }

        var (first, second) = (mix.Parts[0], mix.Parts.ElementAtOrDefault(1));
        var clear = second is null || first.Share.Likely!.Value.Low > second.Share.Likely!.Value.High;
        var head = Words.Title(column);
        string Named(string value) => column == ColumnNames.Front ? Words.Title(value) : Words.Plain(value);
        return new Page($"{column}s", $"{head}s", clear
            ? $"Their first {column} is {Named(first.Value)}: {Figures.CountOf(first.Share)} plays."
            : $"No {column} stands clear: {Words.Join(mix.Parts.Take(2).Select(part => $"{Named(part.Value)} ({part.Share.Count})"))} lead {Figures.Count(mix.Plays)} plays.")
        {
            Blocks =
            [
                new Heading($"{head}s they call", $"Share of {Words.Figured(mix.Plays, "play")} with a charted {column}. Bars are likely for all at once."),
                MixTable.Of(study, head, column, study.Plays, mix, MixStops.Wide, [.. MixTable.Gains(study)]),
                Paragraph.Note("Yards and gained enough: what offenses did against it."),
                .. When(study, column),
            ],
        };
    }

    private static IEnumerable<Block> When(Study study, string column)
    {
        var plays = study.Plays;
        (string Name, PlayLog Plays)[] times =
        [
            ("1st down", plays.Where(ColumnNames.Down, "1")), ("2nd down", plays.Where(ColumnNames.Down, "2")), ("3rd down", plays.Where(ColumnNames.Down, "3")),
            ("Red zone", plays.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line")),
        ];
        const double Pitch = 129;
        var shown = times.Where(time => time.Plays.Rows > 0).ToArray();
        yield return new Heading("When", "counts of plays, the three most frequent");
        yield return new Table(
            [.. shown.Select((time, i) => new Column(time.Name, i * Pitch, Pitch - 20) { Remark = Words.Figured(time.Plays.Rows, "play") })],
            [new TableRow([.. shown.Select(time => Cells.Counts(Frequent.Values(time.Plays, column)))])])
        { Caption = $"{Words.Title(column)}s by down" };
    }
}
