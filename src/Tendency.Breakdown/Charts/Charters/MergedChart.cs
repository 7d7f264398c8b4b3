using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Charters;

/// <summary>Two charts of one game made one: what both say, what one alone says, and the disagreements marked in the note.</summary>
/// <param name="Headers">Canonical names of the columns either chart has.</param>
/// <param name="Rows">One row a snap of either chart, in order; where they differ the first chart's value stands and the note says both.</param>
/// <param name="Marked">Rows whose note marks a disagreement, or that only one chart has.</param>
public sealed record MergedChart(IReadOnlyList<string> Headers, IReadOnlyList<IReadOnlyList<string>> Rows, int Marked)
{
    public static MergedChart Of(PlayLog a, PlayLog b, Agreement agreement)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        ArgumentNullException.ThrowIfNull(agreement);
        var headers = ColumnCatalogue.All.Select(c => c.Name).Where(name => name == ColumnNames.Note || a.Has(name) || b.Has(name)).ToArray();
        var differ = agreement.Disagreements.ToLookup(d => d.RowA);
        var partner = agreement.Pairs.ToDictionary(pair => pair.A, pair => pair.B);
        var rows = new List<IReadOnlyList<string>>();
        var marked = 0;
        var nextB = 0;
        var onlyB = agreement.OnlyB.ToHashSet();
        foreach (var rowA in Enumerable.Range(0, a.Rows))
        {
            if (partner.TryGetValue(rowA, out var rowB))
            {
                // Snaps that only the second chart has go before the next one both have.
                for (; nextB < rowB; nextB++)
                {
                    AddOnlyB(nextB);
                }

                nextB = Math.Max(nextB, rowB + 1);
                var notes = differ[rowA].Select(d => $"{d.Column}: {d.ValueA} | {d.ValueB}").ToArray();
                marked += notes.Length > 0 ? 1 : 0;
                rows.Add(Row(name => First(Written(a, name, rowA), Written(b, name, rowB)), notes.Length > 0 ? "charts differ: " + string.Join("; ", notes) : ""));
            }
            else
            {
                marked++;
                rows.Add(Row(name => Written(a, name, rowA), "only in the first chart"));
            }
        }

        for (; nextB < b.Rows; nextB++)
        {
            AddOnlyB(nextB);
        }

        return new MergedChart(headers, Numbered(headers, rows), marked);

        void AddOnlyB(int row)
        {
            if (onlyB.Contains(row))
            {
                marked++;
                rows.Add(Row(name => Written(b, name, row), "only in the second chart"));
            }
        }

        string[] Row(Func<string, string> cell, string note) =>
            [.. headers.Select(name => name == ColumnNames.Note ? string.Join("; ", new[] { cell(name), note }.Where(text => text.Length > 0)) : cell(name))];
    }

    // The two charts may number snaps differently; the merged one counts each game from one.
    private static string[][] Numbered(string[] headers, List<IReadOnlyList<string>> rows)
    {
        var (game, play) = (Array.IndexOf(headers, ColumnNames.Game), Array.IndexOf(headers, ColumnNames.Play));
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. rows.Select(row =>
        {
            var number = counts[row[game]] = counts.GetValueOrDefault(row[game]) + 1;
            return row.Select((cell, at) => at == play ? $"{number}" : cell).ToArray();
        })];
    }

    private static string First(string one, string two) => one.Length > 0 ? one : two;

    private static string Written(PlayLog log, string name, int row) =>
        name is ColumnNames.Clip or ColumnNames.Note ? log.Text(name, row)
        : log.Number(name)[row] is int number ? name == ColumnNames.Clock ? $"{number / 60}:{number % 60:00}" : $"{number}"
        : log.Category(name)[row];
}
