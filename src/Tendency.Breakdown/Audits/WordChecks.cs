using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about words: each spelling that no glossary knows is a slip of one that is known, or the staff's own.</summary>
internal static class WordChecks
{
    /// <summary>A misspelt word is rare, and the word it stands for is not.</summary>
    private const int RareMost = 3;
    private const int TimesAsOften = 10;
    private const int PlacesNamed = 5;

    // A staff has some dozens of words in a column; a column of free text is not looked through word by word.
    private const int MostWords = 400;
    private const int LongestWord = 40;

    public static IEnumerable<Problem> Run(AuditedCharts charts) =>
        ColumnCatalogue.All.Where(column => column.Kind == CellKind.Word && charts.Log.IsCharted(column.Name)).SelectMany(column => Of(charts, column));

    private static IEnumerable<Problem> Of(AuditedCharts charts, ChartColumn column)
    {
        var isFormation = column.Name == ColumnNames.Formation;
        string Shape(string written) => isFormation ? FormationWord.Of(written).Shape : written;
        var rows = Enumerable.Range(0, charts.Log.Rows).Select(row => (Row: row, Written: charts.Raw(row, column.Name))).Where(cell => cell.Written.Length > 0);
        var words = rows.GroupBy(cell => Glossary.Key(Shape(cell.Written)), StringComparer.Ordinal)
            .Select(group => (group.Key, Rows: group.Select(cell => cell.Row).ToArray(), group.First().Written))
            .OrderByDescending(word => word.Rows.Length).ToArray();
        var known = words.Where(word => IsKnown(charts.Glossary, column, Shape(word.Written))).Select(word => word.Key).ToHashSet(StringComparer.Ordinal);
        var vocabulary = column.GlossaryKind.Length == 0 ? [] : charts.Glossary.Words(column.GlossaryKind).Concat(isFormation ? charts.Glossary.Words("formation") : [])
            .DistinctBy(Glossary.Key).ToDictionary(Glossary.Key, word => word, StringComparer.Ordinal);
        var frequent = words.Take(MostWords).ToArray();
        foreach (var (key, at, written) in words.Where(word => !known.Contains(word.Key) && word.Key.Length <= LongestWord).Take(MostWords))
        {
            var meant = at.Length > RareMost ? null : Meant(key, at.Length, frequent, known, vocabulary);
            if (meant is { } word)
            {
                foreach (var row in at)
                {
                    var cell = charts.Raw(row, column.Name);
                    yield return charts.Cell(WordRules.Misspelt, row, column.Name, $"'{cell}' may be '{word.Spelt}'{(word.Count > 0 ? $" ({word.Count} rows)" : "")}.", InPlace(cell, Shape(cell), word.Spelt));
                }
            }
            else if (column.GlossaryKind.Length > 0 && at.Any(row => charts.Calls[row] != "none") && !written.All(c => !char.IsLetterOrDigit(c)))
            {
                var nearest = vocabulary.OrderBy(v => NearestWord.Edits(key, v.Key)).Take(2).Select(v => v.Value);
                var places = string.Join(", ", at.Take(PlacesNamed).Select(row => $"{charts.File(row)}:{charts.Line(row)}"));
                yield return charts.Whole(WordRules.Unknown, at[0], column.Name,
                    $"'{Shape(written)}' is in no glossary: {at.Length} {(at.Length == 1 ? "row" : "rows")} ({places}{(at.Length > PlacesNamed ? ", …" : "")}). Nearest known: {string.Join(", ", nearest)}.")
                    with
                { Value = Shape(written) };
            }
        }

        var plain = column.Name == ColumnNames.RunScheme ? Array.Find(words, word => word.Key is "counter" or "ctr") : default;
        if (plain.Rows is { Length: > 0 } counters)
        {
            yield return charts.Whole(WordRules.AmbiguousWord, counters[0], column.Name, $"'{plain.Written}' ({counters.Length} {(counters.Length == 1 ? "row" : "rows")}) counts as counter gt.", "") with { Value = plain.Written };
        }
    }

    private static bool IsKnown(Glossary glossary, ChartColumn column, string shape) =>
        column.Name == ColumnNames.Formation
            ? glossary.StaffFormation(shape) is not null || glossary.Find(column.GlossaryKind, shape) is not null || shape.Split([' ', '_', '-']).All(part => IsPart(glossary, part))
            : column.GlossaryKind.Length > 0 && glossary.Find(column.GlossaryKind, shape) is not null;

    // Gun Trips Bunch is known when each of its parts is.
    private static bool IsPart(Glossary glossary, string part) =>
        glossary.Find("formation_family", part) is not null || glossary.Find("passer_set", part) is not null || glossary.Find("strength", part) is not null
        || glossary.Find("personnel", part) is not null || glossary.StaffFormation(part) is not null;

    // First a word of these charts, then one of the glossary; of several the commonest.
    private static (string Spelt, int Count)? Meant(
        string key, int count, (string Key, int[] Rows, string Written)[] words, HashSet<string> known, Dictionary<string, string> vocabulary)
    {
        foreach (var (otherKey, rows, written) in words)
        {
            if (otherKey != key && (known.Contains(otherKey) ? rows.Length >= count : rows.Length >= TimesAsOften * count) && TypingSlip.Between(key, otherKey))
            {
                return (written, rows.Length);
            }
        }

        return vocabulary.Where(word => TypingSlip.Between(key, word.Key)).OrderBy(word => NearestWord.Edits(key, word.Key)).Select(word => ((string, int)?)(word.Value, 0)).FirstOrDefault();
    }

    private static string InPlace(string cell, string shape, string meant)
    {
        var spelt = FormationWord.Of(meant).Shape;
        return cell.Contains(shape, StringComparison.Ordinal) ? cell.Replace(shape, spelt, StringComparison.Ordinal) : spelt;
    }
}
