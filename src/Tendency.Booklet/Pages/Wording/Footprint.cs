using System.Globalization;
using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What every page rests on, in one line.</summary>
internal static class Footprint
{
    /// <summary>"5 games, 331 plays, charted to Sat 21 Nov".</summary>
    public static string Of(Study study) => string.Join(", ", new[]
    {
        Words.Figured(study.Games.Count, "game"),
        Words.Figured(study.Plays.Rows, "play"),
        study.ChartedTo is { } day ? $"charted to {Day(day)}" : "",
    }.Where(word => word.Length > 0));

    /// <summary>"Sat 21 Nov".</summary>
    public static string Day(DateOnly date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>"“Likely” = 95% interval; it counts that plays come in games".</summary>
    public static string LikelyMeans(Study study) =>
        $"“Likely” = {Figures.Number(study.Level * 100, study.Level * 100 % 1 > 1e-9 ? 1 : 0)}% interval{(study.Games.Count > 1 ? "; it counts that plays come in games" : "")}";
}
