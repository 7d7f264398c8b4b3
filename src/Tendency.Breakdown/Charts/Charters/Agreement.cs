using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Inference.Agreement;
using Tendency.Inference.Comparisons;

namespace Tendency.Breakdown.Charts.Charters;

/// <summary>How far two charts of the same game agree.</summary>
/// <param name="Pairs">Rows of both charts that are the same snap.</param>
/// <param name="OnlyA">Rows that only the first chart has.</param>
/// <param name="OnlyB">Rows that only the second chart has.</param>
/// <param name="Columns">One line a column that both charted, in the chart's order.</param>
/// <param name="Disagreements">Every cell both filled and filled differently, by snap.</param>
public sealed record Agreement(
    IReadOnlyList<(int A, int B)> Pairs, IReadOnlyList<int> OnlyA, IReadOnlyList<int> OnlyB, IReadOnlyList<ColumnAgreement> Columns, IReadOnlyList<Disagreement> Disagreements)
{
    private static readonly string[] s_notCompared = [ColumnNames.Game, ColumnNames.Play, ColumnNames.Clip, ColumnNames.Note];

    /// <param name="a">One charter's plays.</param>
    /// <param name="b">The other's.</param>
    /// <param name="level">Level of the intervals, in (0, 1).</param>
    /// <param name="glossary">Tells which words mean the same; null = the built-in one.</param>
    public static Agreement Compare(PlayLog a, PlayLog b, double level = 0.95, Glossary? glossary = null)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var words = glossary ?? Glossary.BuiltIn;
        var pairs = GamePairs.Of(a, b).SelectMany(game => SnapPairs.Of(a, game.A, b, game.B)).ToArray();
        var columns = new List<ColumnAgreement>();
        var disagreements = new List<Disagreement>();
        foreach (var column in ColumnCatalogue.All.Where(c => !s_notCompared.Contains(c.Name) && a.IsCharted(c.Name) && b.IsCharted(c.Name)))
        {
            var (inA, inB) = (a.Dimension(column.Name), b.Dimension(column.Name));
            var codes = new Dictionary<string, int>(StringComparer.Ordinal);
            var rated = new List<(int A, int B)>();
            foreach (var (rowA, rowB) in pairs)
            {
                var (keyA, keyB) = (KeyOf(column, inA[rowA], words), KeyOf(column, inB[rowB], words));
                if (keyA.Length == 0 || keyB.Length == 0)
                {
                    continue;
                }

                rated.Add((Code(keyA), Code(keyB)));
                if (keyA != keyB)
                {
                    disagreements.Add(new Disagreement(column.Name, rowA, rowB, inA[rowA], inB[rowB]));
                }
            }

            if (rated.Count > 0)
            {
                columns.Add(Of(column.Name, rated, codes.Count, level));
            }

            int Code(string key) => codes.TryGetValue(key, out var code) ? code : codes[key] = codes.Count;
        }

        var (pairedA, pairedB) = (pairs.Select(p => p.A).ToHashSet(), pairs.Select(p => p.B).ToHashSet());
        return new Agreement(
            pairs,
            [.. Enumerable.Range(0, a.Rows).Where(row => !pairedA.Contains(row))],
            [.. Enumerable.Range(0, b.Rows).Where(row => !pairedB.Contains(row))],
            columns,
            [.. disagreements.OrderBy(d => d.RowA)]);
    }

    // No touchdown is charted as a blank cell, which here is an answer like any other.
    private static string KeyOf(ChartColumn column, string word, Glossary glossary) =>
        column.Name == ColumnNames.Touchdown ? (word.Length == 0 ? "no" : word)
        : column.GlossaryKind.Length > 0 && glossary.Find(column.GlossaryKind, word) is { } term ? term.Canonical
        : Glossary.Key(word) is { Length: > 0 } key && column.Kind == CellKind.Word ? key
        : word;

    private static ColumnAgreement Of(string name, List<(int A, int B)> rated, int k, double level)
    {
        var counts = new int[k * k];
        foreach (var (one, two) in rated)
        {
            counts[(one * k) + two]++;
        }

        var kappa = Kappa.Of(new CountTable(k, k, counts));
        var interval = kappa.Interval(level);
        return new ColumnAgreement(name, rated.Count, (double)kappa.Same / kappa.Count, kappa.Value, interval?.Low, interval?.High);
    }
}

/// <summary>Agreement on one column.</summary>
/// <param name="Column">Its name.</param>
/// <param name="Plays">Snaps on which both charted it.</param>
/// <param name="Share">Share of them on which both say the same, 0 to 1.</param>
/// <param name="Kappa">Cohen's unweighted kappa; null where both used one value only.</param>
/// <param name="Low">Lower limit of kappa; null with it.</param>
/// <param name="High">Upper limit.</param>
public sealed record ColumnAgreement(string Column, int Plays, double Share, double? Kappa, double? Low, double? High);

/// <summary>One cell on which two charters differ.</summary>
public sealed record Disagreement(string Column, int RowA, int RowB, string ValueA, string ValueB);
