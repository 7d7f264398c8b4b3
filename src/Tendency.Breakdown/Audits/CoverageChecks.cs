using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.GameRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about how fully and how varied a column is charted.</summary>
internal static class CoverageChecks
{
    private const double MillionToOne = -13.8155;

    private static readonly string[] s_every = [Hash, Personnel, Formation, BackSet, BackSide, Front, Coverage, BallOn, Quarter, Clock, Series];
    private static readonly string[] s_ofRuns = [RunScheme, RunSide];
    private static readonly string[] s_ofPasses = [PassConcept];
    private static readonly string[] s_defaults = [Hash, Personnel, BackSide, Front, Coverage, RunSide, Strength];

    public static IEnumerable<Problem> Run(AuditedCharts charts)
    {
        var totals = s_defaults.ToDictionary(name => name, name => Counts(charts.Log.Category(name)));
        return charts.Games.SelectMany(game => Size(charts, game).Concat(Blanks(charts, game)).Concat(Unknowns(charts, game)).Concat(Stuck(charts, game, totals)));
    }

    private static IEnumerable<Problem> Size(AuditedCharts charts, AuditedGame game)
    {
        foreach (var team in game.Rows.Where(row => charts.Calls[row] is not ("none" or "") && charts.Log.Category(Down)[row] != "try").GroupBy(row => charts.Log.Category(Offense)[row], StringComparer.Ordinal))
        {
            var snaps = team.Count();
            if (snaps is (>= 25 and < 40) or > 100)
            {
                yield return charts.Whole(FewSnaps, game.Rows[0], "", $"{game.Name}: {snaps} countable snaps{(team.Key.Length > 0 ? $" of {team.Key}" : "")}; usual is 55 to 80.");
            }
        }
    }

    // Team by team: of the other team often only down and distance are charted.
    private static IEnumerable<Problem> Blanks(AuditedCharts charts, AuditedGame game) =>
        game.Rows.GroupBy(row => charts.Log.Category(Offense).Codes[row]).SelectMany(team => Blanks(charts, game, [.. team]));

    private static IEnumerable<Problem> Blanks(AuditedCharts charts, AuditedGame game, IReadOnlyList<int> teamRows)
    {
        foreach (var name in s_every.Concat(s_ofRuns).Concat(s_ofPasses))
        {
            var rows = teamRows.Where(row => Applies(charts, name, row)).ToArray();
            var blank = rows.Select(row => charts.Raw(row, name).Length == 0).ToArray();
            var count = blank.Count(b => b);
            if (count == 0 || count == rows.Length || rows.Length < 20 || !charts.Log.Has(name))
            {
                continue;
            }

            var tail = blank.Reverse().TakeWhile(b => b).Count();
            var before = rows.Length - tail;
            if (tail >= 10 && before >= 10 && blank.Take(before).Count(b => !b) >= 0.8 * before)
            {
                yield return charts.Whole(StopsBeingCharted, rows[before], name, $"{game.Name}: {name} is blank from here to the end, {tail} rows.");
            }
            else if (count > 0.1 * rows.Length)
            {
                yield return charts.Whole(ManyBlank, rows[Array.IndexOf(blank, true)], name, $"{game.Name}: {name} is blank on {count} of {rows.Length} rows.");
            }
        }
    }

    private static IEnumerable<Problem> Unknowns(AuditedCharts charts, AuditedGame game)
    {
        foreach (var (name, word) in ((string, string)[])[(RunScheme, "unknown run"), (PassConcept, "unknown pass")])
        {
            var rows = game.Rows.Where(row => charts.Log.Category(name).Codes[row] != 0).ToArray();
            var unknown = rows.Where(row => charts.Glossary.Find(ColumnCatalogue.Find(name)!.GlossaryKind, charts.Log.Category(name)[row])?.Canonical == word).ToArray();
            if (rows.Length >= 10 && unknown.Length > 0.15 * rows.Length)
            {
                yield return charts.Whole(ManyUnknown, unknown[0], name, $"{game.Name}: {unknown.Length} of {rows.Length} are {word}.");
            }
        }
    }

    private static IEnumerable<Problem> Stuck(AuditedCharts charts, AuditedGame game, Dictionary<string, int[]> totals)
    {
        foreach (var name in s_defaults)
        {
            var column = charts.Log.Category(name);
            var rows = game.Rows.Where(row => column.Codes[row] != 0).ToArray();
            if (rows.Length < 12)
            {
                continue;
            }

            var (start, length) = LongestRun([.. rows.Select(row => (int)column.Codes[row])]);
            var code = column.Codes[rows[start]];
            var counts = totals[name];
            var charted = counts.Sum() - counts[0] - length;
            var elsewhere = counts[code] - length;

            // Added halves keep a value never seen elsewhere from having no chance at all.
            var share = (elsewhere + 0.5) / (charted + 1);
            var chance = (length * Math.Log(share)) + Math.Log(rows.Length);
            if (charted >= 15 && length >= 10 && chance < MillionToOne)
            {
                yield return charts.Whole(DefaultLeftIn, rows[start], name, $"{game.Name}: {name} is {column[rows[start]]} on {length} rows in a row, on {share:0%} of the others.");
            }
            else if (rows.Length >= 40 && charted >= 40 && rows.Count(row => column.Codes[row] == code) >= 0.95 * rows.Length && OtherShare(counts, column, rows, code) < 0.8)
            {
                yield return charts.Whole(NeverChanges, rows[0], name, $"{game.Name}: {name} is nearly always {column[rows[start]]}.");
            }
        }
    }

    private static double OtherShare(int[] counts, CategoryColumn column, int[] rows, ushort code)
    {
        var others = counts.Sum() - counts[0] - rows.Length;
        return others == 0 ? 1 : (double)(counts[code] - rows.Count(row => column.Codes[row] == code)) / others;
    }

    private static int[] Counts(CategoryColumn column)
    {
        var counts = new int[column.Levels.Count];
        foreach (var code in column.Codes)
        {
            counts[code]++;
        }

        return counts;
    }

    private static (int Start, int Length) LongestRun(int[] values)
    {
        var (bestStart, best, start) = (0, 1, 0);
        for (var at = 1; at <= values.Length; at++)
        {
            if (at == values.Length || values[at] != values[start])
            {
                if (at - start > best)
                {
                    (bestStart, best) = (start, at - start);
                }

                start = at;
            }
        }

        return (bestStart, best);
    }

    private static bool Applies(AuditedCharts charts, string name, int row)
    {
        var call = charts.Calls[row];
        return charts.Log.Category(Down)[row] != "try"
            && (s_ofRuns.Contains(name) ? call == "run" : s_ofPasses.Contains(name) ? call == "pass" : call is "run" or "pass" or "rpo");
    }
}
