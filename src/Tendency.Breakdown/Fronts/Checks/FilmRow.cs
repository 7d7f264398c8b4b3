using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>What their runs did against one front as charted, before any opinion is mixed in.</summary>
/// <param name="Front">Front as charted, known to us or not.</param>
/// <param name="RunScheme">Empty in the front's total.</param>
/// <param name="Side">Null in the front's total.</param>
/// <param name="Success">Wilson interval of the success share.</param>
/// <param name="Yards">Mean gain; null without one.</param>
public sealed record FilmRow(string Front, string RunScheme, RunTo? Side, int Plays, int Successes, Interval Success, double? Yards)
{
    /// <summary>Rows of the runs in the log they were sampled from.</summary>
    public IReadOnlyList<int> Rows { get; init; } = [];

    /// <summary>Each charted front's total, most plays first, followed by its schemes and sides.</summary>
    public static IReadOnlyList<FilmRow> Of(RunSample sample, double level)
    {
        var judged = sample.Runs.Where(r => r.IsRush && r.Success is not null && r.Front.Length > 0);
        var rows = new List<FilmRow>();
        foreach (var front in judged.GroupBy(r => r.Front, StringComparer.Ordinal).OrderByDescending(g => g.Count()))
        {
            rows.Add(Row(front.Key, "", null, [.. front], level));
            var cells = front.Where(r => r.RunTo is not null).GroupBy(r => (r.Scheme.Name, r.RunTo!.Value)).OrderByDescending(g => g.Count());
            rows.AddRange(cells.Select(c => Row(front.Key, c.Key.Name, c.Key.Value, [.. c], level)));
        }

        return rows;
    }

    private static FilmRow Row(string front, string scheme, RunTo? side, ChartedRun[] runs, double level)
    {
        var successes = runs.Count(r => r.Success == true);
        var gains = runs.Where(r => r.Gain is not null).Select(r => r.Gain!.Value).ToArray();
        return new FilmRow(
            front, scheme, side, runs.Length, successes, OneProportion.Wilson(successes, runs.Length, level), gains.Length == 0 ? null : gains.Average())
        { Rows = [.. runs.Select(r => r.Row)] };
    }
}
