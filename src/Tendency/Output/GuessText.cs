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
                + $"\n{Finding(report)}\n{string.Join(' ', Notes(report).Where(note => note.Length > 0))}\n";
    }

    // The base rate is the games' left out, a hurdle too low; the commoner call is what a coordinator would say without looking.
    private static string Finding(GuessReport report)
    {
        var (all, alone) = (report.Rows[^1].Accuracy, report.Rows[1].Accuracy);
        var (common, count) = report.Commonest;
        var adds = all > alone ? "" : " What they show adds nothing to down and distance.";
        return $"Guessed right: {Percent.Of(all)} from all they show, {Percent.Of(alone)} from down and distance alone, {Percent.Of((double)count / report.Plays.Count)} by always saying {SituationWords.Outcome(report.OutcomeColumn, common)}.{adds}";
    }

    private static string[] Notes(GuessReport report) =>
    [
        "Every play was guessed from other games only.",
        report.Start,
        "Log loss and Brier: less is better. Bits saved: the doubt about a call that is gone, a coin toss holding one bit;",
        HasGameRange(report) ? "their range is that of the games' mean." : "it takes four games to give a range.",
        "Bits to expect: the same with few plays leaning on all.",
    ];

    private static bool HasGameRange(GuessReport report) => report.Rows.Any(row => row.BitsByGame is not null);

    private static OutputTable Models(GuessReport report)
    {
        string[] columns = ["model", "plays", "right", "low", "high", "log loss", "Brier", "bits saved a play"];
        var rows = report.Rows.Select(row => (object?[])
            [row.Model, row.Plays, row.Accuracy, row.Likely.Low, row.Likely.High, Number(row.LogLoss), Number(row.Brier), Number(row.BitsSaved)]);
        return !HasGameRange(report)
            ? new OutputTable(columns, [.. rows])
            : new OutputTable(
                [.. columns, "low", "high"],
                [.. rows.Zip(report.Rows, (cells, row) => (object?[])[.. cells, row.BitsByGame is { } low ? Number(low.Low) : null, row.BitsByGame is { } high ? Number(high.High) : null])]);
    }

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
        ["most readable", "plays", "right", "bits to expect", "bits saved a play"],
        [.. report.MostReadable(plays, s_where).Take(MostSituations).Select(value => (object?[])
        [
            SituationWords.Of([new TellCondition(value.Dimension, value.Value)]), value.Plays, (double)value.Right / value.Plays, Number(value.BitsExpected), Number(value.BitsSaved),
        ])]);

    // A decimal is shown as it is, a double as a percentage.
    private static decimal Number(double value) => decimal.Parse(value.ToString("0.000", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
