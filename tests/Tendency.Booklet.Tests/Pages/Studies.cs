using System.Text;
using Tendency.Booklet.Pages;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.Tests.Shared;

namespace Tendency.Booklet.Tests.Pages;

/// <summary>Studies to compose pages from: five games charted in full, parts of them, and charts of odd shapes.</summary>
/// <remarks>The five charts are a copy of the sample logs as of one day, so that goldens change only with the pages.</remarks>
internal static class Studies
{
    public static Study FiveGames { get; } = WithFindings(Of(Files()));

    public static string[] Files() =>
        [.. Directory.GetFiles(Path.Combine(Checkout.Root, "tests", "Tendency.Booklet.Tests", "Pages", "Charts"), "*.csv").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    public static Study Of(params string[] charts) => Of(WeekPlan.Default, Unit.Offense, charts);

    public static Study Of(WeekPlan week, Unit unit, params string[] charts)
    {
        var read = ChartReader.Read(
            [.. charts.Select((chart, i) => new ChartSource($"{i}.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(chart))))], week, Glossary.BuiltIn);
        var all = DerivedColumns.AddTo(read.Plays, week, Glossary.BuiltIn);
        return new Study(StudiedPlays.Choose(all, week, [], unit, out _)!, all, read, week) { Side = unit == Unit.Offense ? "offense" : "defense" };
    }

    /// <summary>With front check, tells and audit, as the command gathers them; fewer draws, for speed.</summary>
    public static Study WithFindings(Study study)
    {
        var options = new FrontOptions { Draws = 2_000, CardDraws = 500 };
        var check = FrontCheck.Of(study.Plays, FrontBook.BuiltIn, [.. FrontBook.BuiltIn.Fronts.Take(5)], options);
        string[] outcomes = [ColumnNames.Call, ColumnNames.RunTo, ColumnNames.SlideTo];
        return study with
        {
            Fronts = check,
            FrontCard = FrontCard.Of(study.Plays, check, options),
            Tells = [.. outcomes.Where(study.Plays.IsCharted).Select(outcome => Tells.Search(study.Plays, outcome, TellOptions.Default))],
            TellsAnew = SearchedAnew.Of(study.Plays, ColumnNames.Call, TellOptions.Default),
            Guess = Guess.Run(study.Plays, ColumnNames.Call, GuessOptions.Default),
            Steadiness = SteadyHabits.Follow(study.Plays, Habit.Usual, seed: 1, draws: 999),
            Audit = Audit.Run(study.Charts, study.All, study.Week, Glossary.BuiltIn),
        };
    }

    /// <summary>The five games with some columns only, as a chart.</summary>
    public static Study Keeping(Func<string, bool> column) => Of([.. Files().Select(chart => Rewrite(chart, (header, cell) => cell, column))]);

    /// <summary>The five games with cells changed: header and cell in, cell out.</summary>
    public static Study Changed(Func<string, string, string> change) => Of([.. Files().Select(chart => Rewrite(chart, change, _ => true))]);

    /// <summary>As many games as asked for: the five again under other names.</summary>
    public static Study Games(int count)
    {
        var charts = Files();
        return Of([.. Enumerable.Range(0, count).Select(i => Rewrite(charts[i % charts.Length], (header, cell) => header == "game" ? $"Game {i + 1}" : cell, _ => true))]);
    }

    // The charts quote no cell, so a comma always parts two.
    internal static string Rewrite(string chart, Func<string, string, string> change, Func<string, bool> keep)
    {
        var lines = chart.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.TrimEnd('\r').Split(',')).ToArray();
        var kept = lines[0].Index().Where(header => keep(header.Item)).Select(header => header.Index).ToArray();
        var rows = lines.Select((line, i) => string.Join(',', kept.Select(k => i == 0 ? line[k] : Quoted(change(lines[0][k], line[k])))));
        return string.Join('\n', rows) + "\n";
    }

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
