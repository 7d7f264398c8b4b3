using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>How many calls were guessed right: by what was seen, and where.</summary>
internal static class GuessTables
{
    /// <summary>What is seen, the least first: nothing, down and distance, everything. Read against down and distance.</summary>
    /// <param name="everything">What the last row is called.</param>
    public static Table Models(Guessed guessed, string everything)
    {
        var guess = guessed.Report;
        var alone = guessed.DownAndDistance;
        return new Table(
            Columns("Guessing from", $"down and distance {Figures.Percent(alone)}", alone.Value),
            [
                Row($"Nothing: always {Words.Plain(SituationWords.Outcome(guess.OutcomeColumn, guess.Commonest.Outcome))}", guessed.Always, 0),
                Row("Down and distance", alone, guess.DoubtGone(guess.Rows[1].BitsSaved)),
                Row(everything, guessed.All, guess.DoubtGone(guess.Rows[^1].BitsSaved)),
            ])
        { Caption = "Guesses by what is seen" };
    }

    /// <summary>Where more was guessed right than overall, by kind of situation, most to be expected first.</summary>
    /// <param name="kinds">Head and dimension of each group.</param>
    /// <param name="most">Rows of a group.</param>
    public static Block Where(Study study, Guessed guessed, IReadOnlyList<(string Name, string Column)> kinds, int most)
    {
        var rows = new List<TableRow>();
        var shown = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, column) in kinds)
        {
            // Two names for the same plays, as empty and no back, are one situation.
            var values = guessed.Report.MostReadable(study.Plays, [column]).Where(value => !shown.Contains(value.SamePlays)).Take(most).ToArray();
            shown.UnionWith(values.Select(value => value.SamePlays));
            rows.AddRange(values.Length == 0 ? [] : values.Select(value => Row(
                Words.Title(SituationWords.Of(value.Dimension, value.Value)), guessed.Where(value), guessed.Report.DoubtGone(value.BitsExpected))).Prepend(TableRow.GroupHead(name)));
        }

        return rows.Count == 0
            ? Paragraph.Note("No situation was guessed better than all plays together.")
            : new Table(Columns("Situation", $"overall {Figures.Percent(guessed.All)}", guessed.All.Value), rows) { Caption = "Readability by situation" };
    }

    private static Column[] Columns(string head, string axis, double? line) =>
    [
        new(head, 0, 140),
        new("Called right", 160, 150) { Axis = StripAxis.Shares(axis, line) },
        new("Share, likely", 322, 130),
        new("Doubt gone", 460, 56, Align.Right),
    ];

    private static TableRow Row(string name, Share right, double doubtGone) =>
        new(Cells.Name(name), Cells.Strip(right), new ShareCell(right) { Form = ShareForm.OneLine }, Cells.Figure(Figures.Percent(doubtGone)));
}
