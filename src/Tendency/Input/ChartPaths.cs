using Tendency.Breakdown.Charts.Reading;
using Tendency.Files;

namespace Tendency.Input;

/// <summary>From what the user named to the files that are read.</summary>
internal static class ChartPaths
{
    private static readonly string[] s_chartEndings = [".csv", ".tsv", ".xlsx"];

    /// <summary>The week file that belongs to the charts named: the one asked for, the first named, or the first folder's; null when there is none.</summary>
    public static string? WeekFile(Request request)
    {
        if (request.Week is { } named)
        {
            return File.Exists(named) ? named : throw new CommandException($"--week {named}: no such file.");
        }

        return request.Charts.Select(chart => IsWeekFile(chart) ? chart : Path.Combine(chart, "week.toml")).FirstOrDefault(File.Exists);
    }

    /// <summary>The chart files, in order: a folder means its week file's charts, else every csv, tsv and xlsx in it, by name.</summary>
    /// <param name="charts">Files, folders or week files as named.</param>
    /// <param name="weekCharts">File names the week file lists; they stand beside it.</param>
    /// <param name="notCharts">File names beside the charts that are something else: the glossary, the corrections.</param>
    public static IReadOnlyList<ChartSource> Sources(IReadOnlyList<string> charts, IReadOnlyList<string> weekCharts, IReadOnlyCollection<string> notCharts)
    {
        var files = charts.SelectMany(chart => FilesOf(chart, weekCharts, notCharts)).DistinctBy(Path.GetFullPath).ToArray();
        return [.. files.Select(file => new ChartSource(Path.GetFileName(file), () => InputFiles.Open(file)))];
    }

    private static IEnumerable<string> FilesOf(string chart, IReadOnlyList<string> weekCharts, IReadOnlyCollection<string> notCharts)
    {
        var folder = IsWeekFile(chart) ? Path.GetDirectoryName(Path.GetFullPath(chart))! : chart;
        if (!Directory.Exists(folder))
        {
            return File.Exists(chart) ? [chart] : throw new CommandException($"{chart}: no such file or folder.");
        }

        if (weekCharts.Count > 0 && File.Exists(Path.Combine(folder, "week.toml")))
        {
            return weekCharts.Select(name => Path.Combine(folder, name))
                .Select(file => File.Exists(file) ? FolderBounds.Inside(folder, file) : throw new CommandException($"{file}: week.toml names this chart, but it is not there."));
        }

        return Directory.EnumerateFiles(folder)
            .Where(file => s_chartEndings.Contains(Path.GetExtension(file).ToLowerInvariant()) && !notCharts.Contains(Path.GetFileName(file)))
            .Order(StringComparer.Ordinal)
            .Select(file => FolderBounds.Inside(folder, file));
    }

    private static bool IsWeekFile(string path) => Path.GetExtension(path).Equals(".toml", StringComparison.OrdinalIgnoreCase);
}
