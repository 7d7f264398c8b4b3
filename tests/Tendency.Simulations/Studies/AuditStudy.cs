using System.Text;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.SampleCharts;
using Tendency.SampleCharts.Charts;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>How many planted mistakes the audit finds, places and mends, and how often it cries wolf on the rows around them.</summary>
internal static class AuditStudy
{
    /// <param name="charts">Number of simulated charts of four games.</param>
    /// <param name="seed">Seed of the first.</param>
    /// <param name="without">Columns left out of the charts, as many charts have them not.</param>
    /// <param name="output">Takes the table.</param>
    public static void Run(int charts, int seed, IReadOnlyList<string> without, TextWriter output)
    {
        var byKind = MistakePlanter.Kinds.ToDictionary(kind => kind, _ => (Planted: 0, Row: 0, Cell: 0));
        var (rows, clean, alarms, cleanAlarms) = (0, 0, 0, 0);
        var wolf = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var n = 0; n < charts; n++)
        {
            var sheet = Scenario.Generate((ulong)(seed + n), 4, new ScenarioOptions { SnapsPerGame = 90 });
            clean += sheet.Rows.Count;
            cleanAlarms += Alarms(sheet, without).Count(problem => Count(wolf, "correct chart " + problem.Rule.Code));
            var planter = new MistakePlanter(sheet, new Chance((ulong)(seed + n)).Fork(7));
            var kinds = MistakePlanter.Kinds.Skip(n * 5 % MistakePlanter.Kinds.Count).Concat(MistakePlanter.Kinds.Take(n * 5 % MistakePlanter.Kinds.Count)).ToArray();
            var (chart, planted, keys) = planter.Plant(kinds, 12);
            var problems = Alarms(chart, without);
            rows += chart.Rows.Count;
            var at = keys.Select((key, i) => (key, i)).ToDictionary(k => k.key, k => k.i + 2);
            foreach (var mistake in planted.Where(p => !without.Contains(p.Column)))
            {
                var line = at[mistake.Key];
                var here = problems.Where(p => p.Place.Line == line || (mistake.Column.Length == 0 && Math.Abs(p.Place.Line - line) == 1)).ToArray();
                var cell = mistake.Column.Length == 0 ? here.Length > 0 : here.Any(p => p.Place.Column == mistake.Column && p.Suggestion == mistake.Right);
                var (count, row, right) = byKind[mistake.Kind];
                byKind[mistake.Kind] = (count + 1, row + (here.Length > 0 ? 1 : 0), right + (cell ? 1 : 0));
            }

            var touched = planted.SelectMany(p => p.Column.Length == 0 ? new[] { at[p.Key] - 1, at[p.Key], at[p.Key] + 1 } : [at[p.Key]]).ToHashSet();
            alarms += problems.Where(p => !touched.Contains(p.Place.Line)).Count(p => Count(wolf, p.Rule.Code));
        }

        output.WriteLine($"{"kind",-26}{"planted",9}{"row",8}{"cell",8}");
        foreach (var (kind, (count, row, cell)) in byKind.Where(k => k.Value.Planted > 0))
        {
            output.WriteLine($"{kind,-26}{count,9}{(double)row / count,8:P0}{(double)cell / count,8:P0}");
        }

        var all = byKind.Values.Sum(k => k.Planted);
        output.WriteLine($"{"all",-26}{all,9}{(double)byKind.Values.Sum(k => k.Row) / all,8:P1}{(double)byKind.Values.Sum(k => k.Cell) / all,8:P1}");
        output.WriteLine($"errors and warnings on correct charts: {cleanAlarms} in {clean} snaps; beside planted mistakes: {alarms} in {rows} snaps, one in {(alarms == 0 ? double.PositiveInfinity : (double)rows / alarms):0}");
        output.WriteLine(string.Join(", ", wolf.OrderByDescending(w => w.Value).Select(w => $"{w.Key} {w.Value}")));
    }

    private static bool Count(Dictionary<string, int> wolf, string code)
    {
        wolf[code] = wolf.GetValueOrDefault(code) + 1;
        return true;
    }

    private static Problem[] Alarms(ChartSheet sheet, IReadOnlyList<string> without)
    {
        var keep = Enumerable.Range(0, sheet.Headers.Count).Where(at => !without.Contains(sheet.Headers[at])).ToArray();
        var slim = new ChartSheet(sheet.FileName, [.. keep.Select(at => sheet.Headers[at])], [.. sheet.Rows.Select(row => keep.Select(at => row[at]).ToArray())]);
        var read = ChartReader.Read([new ChartSource(sheet.FileName, () => new MemoryStream(Encoding.UTF8.GetBytes(slim.ToText())))], WeekPlan.Default, Glossary.BuiltIn);
        var report = Audit.Run(read, DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn), WeekPlan.Default, Glossary.BuiltIn);
        return [.. report.Problems.Where(p => p.Rule.Severity != Severity.Note)];
    }
}
