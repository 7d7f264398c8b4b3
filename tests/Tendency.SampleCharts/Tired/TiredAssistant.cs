using Tendency.SampleCharts.Charts;

namespace Tendency.SampleCharts.Tired;

/// <summary>
/// Charts a clean game once more at two in the morning: single cells slip (never two within two rows of each other, so that each
/// can be told from its neighbours), words come as the staff says them, and each game has a trouble of its own.
/// </summary>
public static class TiredAssistant
{
    private const int RowsBetweenSlips = 3;

    /// <summary>The sheets of one set, in order of games, as files with the list of what is wrong with them.</summary>
    public static IReadOnlyList<TiredFile> Chart(IReadOnlyList<ChartSheet> clean, ulong seed) =>
        Chart(clean, seed, game => Trouble.Of[game % Trouble.Of.Count]);

    /// <summary>The same slips of single cells and staff words, without the troubles of whole files.</summary>
    public static IReadOnlyList<TiredFile> SlipCellsOnly(IReadOnlyList<ChartSheet> clean, ulong seed) =>
        Chart(clean, seed, _ => Trouble.None);

    private static List<TiredFile> Chart(IReadOnlyList<ChartSheet> clean, ulong seed, Func<int, Trouble> troubleOf)
    {
        var files = new List<TiredFile>();
        for (var game = 0; game < clean.Count; game++)
        {
            var chance = new Chance(seed).Fork((ulong)game);
            var sheet = clean[game];
            var rows = sheet.Rows.Select(cells => new TiredRow(sheet.Headers, cells)).ToList();
            var trouble = troubleOf(game);
            trouble.Before(rows, chance);
            SlipCells(rows, game, chance);
            foreach (var row in rows)
            {
                UseStaffWords(row, sheet.Headers, chance);
            }

            trouble.After(rows, chance);
            files.Add(TiredFile.Write(sheet, rows, trouble));
        }

        return files;
    }

    /// <summary>Each kind of slip of the night once, where the game has a row for it, apart from one another.</summary>
    private static void SlipCells(List<TiredRow> rows, int game, Chance chance)
    {
        var kinds = SlipKinds.Rare.Concat(SlipKinds.Drive).Concat(SlipKinds.Other.Where((_, i) => i % 2 == game % 2));
        foreach (var kind in kinds)
        {
            var start = chance.Between(0, rows.Count - 1);
            for (var step = 0; step < rows.Count; step++)
            {
                var at = (start + step) % rows.Count;
                if (NearSlip(rows, at) || kind.Wrong(rows[at], at == 0 ? null : rows[at - 1], chance) is not { } wrong)
                {
                    continue;
                }

                rows[at].Spoil(kind.Column, wrong, kind.What);
                break;
            }
        }
    }

    private static bool NearSlip(List<TiredRow> rows, int at) =>
        rows[Math.Max(0, at - RowsBetweenSlips)..Math.Min(rows.Count, at + RowsBetweenSlips + 1)].Any(row => row.Slips.Count > 0);

    private static void UseStaffWords(TiredRow row, IReadOnlyList<string> headers, Chance chance)
    {
        foreach (var header in headers)
        {
            if (row[header] == row.Film(header))
            {
                row[header] = StaffWords.Write(header, row.Film(header), row["strength"], chance);
            }
        }
    }
}
