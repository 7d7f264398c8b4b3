using System.Globalization;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Input;

namespace Tendency.Output;

/// <summary>How well calls were guessed, as text: by model, by what was said, by game, and where best.</summary>
internal static class GuessText
{
    private const int MostSituations = 6;

    private static readonly string[] s_where =
    [
        ColumnNames.DownDistance, ColumnNames.Personnel, ColumnNames.Formation, ColumnNames.BackSet, ColumnNames.BackSide, ColumnNames.Motion, ColumnNames.Tempo,
        ColumnNames.FieldZone, ColumnNames.ScoreState,
    ];

    /// <param name="plays">The log that was guessed.</param>
    public static string Of(GuessReport report, PlayLog plays)
    {
        OutputTable[] tables = [Models(report), Calibration(report), Games(report, plays), Where(report, plays)];
        return report.Rows.Count == 0
            ? TableText.Write(tables[0], OutputFormat.Text)
            : string.Join('\n', tables.Where(table => table.Rows.Count > 0).Select(table => TableText.Write(table, OutputFormat.Text)))
                + "\nEvery play was guessed from other games only. Log loss and Brier: less is better. Bits saved: the doubt about a call that is gone, a coin toss holding one bit.\n";
    }

    private static OutputTable Models(GuessReport report) => new(
        ["model", "plays", "right", "log loss", "Brier", "bits saved a play"],
        [.. report.Rows.Select(row => (object?[])[row.Model, row.Plays, row.Accuracy, Number(row.LogLoss), Number(row.Brier), Number(row.BitsSaved)])]);

    private static OutputTable Calibration(GuessReport report) => new(
        [$"{report.Calibrated} said", "plays", "mean said", "seen", "low", "high"],
        [.. report.Calibration.Where(bin => bin.Count > 0).Select(bin => (object?[])
        [
            $"{Percent.Of(bin.From)} to {Percent.Of(bin.To)}", bin.Count, bin.MeanForecast,
            .. bin.Count < Estimate.FewestPlays ? (object?[])[$"{bin.Hits} of {bin.Count}", null, null] : [(double)bin.Hits / bin.Count, bin.Likely.Low, bin.Likely.High],
        ])]);

    private static OutputTable Games(GuessReport report, PlayLog plays)
    {
        var game = plays.Category(ColumnNames.Game);
        return new OutputTable(
            ["game", "plays", "right", "bits saved a play"],
            [.. report.Plays.GroupBy(play => game.Codes[play.Row]).OrderBy(g => g.Key).Select(g => (object?[])
            [
                game.Levels[g.Key], g.Count(), g.Average(play => play.IsRight ? 1.0 : 0), Number(g.Average(play => play.BitsSaved)),
            ])]);
    }

    private static OutputTable Where(GuessReport report, PlayLog plays) => new(
        ["most readable", "plays", "right", "bits saved a play"],
        [.. s_where.Where(column => plays.IsCharted(column) && column != report.OutcomeColumn)
            .SelectMany(column => report.By(plays, column))
            .Where(value => value.BitsSaved > 0)
            .OrderByDescending(value => value.BitsExpected)
            .ThenBy(value => value.Dimension, StringComparer.Ordinal)
            .Take(MostSituations)
            .Select(value => (object?[])
            [
                SituationWords.Of([new TellCondition(value.Dimension, value.Value)]), value.Plays, (double)value.Right / value.Plays, Number(value.BitsSaved),
            ])]);

    // A decimal is shown as it is, a double as a percentage.
    private static decimal Number(double value) => decimal.Parse(value.ToString("0.000", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
