using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>What <c>--against</c> means: other charts, or a part of the same ones.</summary>
internal static class ComparedSets
{
    private const string Tag = "tag";

    /// <returns>Our plays and those they are set beside; a play stands in one of them only.</returns>
    public static (PlayLog Ours, PlayLog Theirs) Of(Request request, ChartedWeek week, StudiedPlays studied, string against)
    {
        if (File.Exists(against) || Directory.Exists(against))
        {
            var other = request with { Charts = [against], Week = null, Only = [.. request.Only.Where(c => c.Name is not (ColumnNames.Offense or ColumnNames.Defense))] };
            return (studied.Plays, ChartedWeek.From(other).Choose(other, studied.Unit).Plays);
        }

        var inside = Part(week, studied.Plays, against);
        var theirs = studied.Plays.Where(row => inside[row]);
        return theirs.Rows == 0 || theirs.Rows == studied.Plays.Rows
            ? throw new CommandException($"--against {against}: that is {(theirs.Rows == 0 ? "none" : "all")} of the plays; there are not two sets to compare.")
            : (studied.Plays.Where(row => !inside[row]), theirs);
    }

    private static bool[] Part(ChartedWeek week, PlayLog plays, string against)
    {
        var equals = against.IndexOf('=', StringComparison.Ordinal);
        var name = equals > 0 ? against[..equals].Trim() : "";
        var values = against[(equals + 1)..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (name.Equals(Tag, StringComparison.OrdinalIgnoreCase))
        {
            var games = week.Week.Charts.Where(chart => chart.Tags.Intersect(values, StringComparer.OrdinalIgnoreCase).Any()).Select(chart => chart.Game).ToArray();
            return games.Length == 0
                ? throw new CommandException($"--against {against}: no chart in week.toml has that tag. Tags: {string.Join(", ", week.Week.Charts.SelectMany(c => c.Tags).Distinct(StringComparer.Ordinal).DefaultIfEmpty("none"))}.")
                : new Condition(ColumnNames.Game, games).Rows(plays);
        }

        return name.Length > 0 && values.Length > 0 && DimensionNames.Find(name) is { } column
            ? new Condition(column, values).Rows(plays)
            : throw new CommandException($"--against {against}: no such file or folder, and not name=value of a column either.");
    }
}
