using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Audits;

/// <summary>The charts as the rules see them: typed cells, the cells as written, and the places they stand in.</summary>
internal sealed class AuditedCharts
{
    private readonly Dictionary<(string File, int Line), SheetRow> _rows = [];
    private readonly Dictionary<string, HeaderMap> _headers = new(StringComparer.Ordinal);
    private const int MostTitleRows = 50;
    private const int LeastWholeGame = 20;
    private const int MostStrayRows = 2;
    private const int MostGames = 200;

    private readonly CategoryColumn _files;
    private Dictionary<string, string[]>? _people;
    private readonly NumberColumn _lines;
    private readonly Dictionary<string, int[]> _setAside;
    private readonly HashSet<string> _goalFiles;
    private readonly Dictionary<string, int[]> _rowsByFile;

    public AuditedCharts(ReadLog read, PlayLog log, WeekPlan week, Glossary glossary)
    {
        Read = read;
        Log = log;
        Week = week;
        Glossary = glossary;
        _files = log.Category(ColumnNames.SourceFile);
        _lines = log.Number(ColumnNames.SourceLine);
        Calls = log.Has(ColumnNames.Called) ? log.Category(ColumnNames.Called) : log.Category(ColumnNames.Call);
        foreach (var sheet in read.Sheets)
        {
            foreach (var row in sheet.Rows)
            {
                _ = _rows.TryAdd((sheet.File, row.Line), row);
            }

            if (HeaderOf(sheet) is { } header)
            {
                _ = _headers.TryAdd(sheet.File, HeaderMap.Read(sheet.File, header, week, []));
            }
        }

        _setAside = read.Problems.Where(p => p.Rule == ReadingRules.UnreadableRequiredCell || p.Rule == ReadingRules.SpreadsheetDamage || p.Rule == ReadingRules.NothingCharted)
            .GroupBy(p => p.Place.File, StringComparer.Ordinal).ToDictionary(file => file.Key, file => file.Select(p => p.Place.Line).Distinct().Order().ToArray(), StringComparer.Ordinal);
        _rowsByFile = Enumerable.Range(0, log.Rows).GroupBy(File, StringComparer.Ordinal).ToDictionary(file => file.Key, file => file.OrderBy(Line).ToArray(), StringComparer.Ordinal);
        _goalFiles = [.. Enumerable.Range(0, log.Rows).Where(row => Raw(row, ColumnNames.Distance) is ['g' or 'G', ..]).Select(File)];
        var games = log.Category(ColumnNames.Game);
        var labels = MisspeltGames(games);
        Games = [.. Enumerable.Range(0, log.Rows).GroupBy(row => labels.GetValueOrDefault(games[row], games[row]), StringComparer.Ordinal).Select(g => new AuditedGame(g.Key, [.. g]))];
    }

    public ReadLog Read { get; }

    public PlayLog Log { get; }

    public WeekPlan Week { get; }

    public Glossary Glossary { get; }

    /// <summary>Games in order of first appearance, rows in the order of the file.</summary>
    public IReadOnlyList<AuditedGame> Games { get; }

    /// <summary>The personnel of a formation, the commonest first.</summary>
    /// <param name="formation">Key of the shape.</param>
    public IReadOnlyList<string> PeopleOf(string formation) => (_people ??= Enumerable.Range(0, Log.Rows)
        .Where(row => Log.Category(ColumnNames.Personnel).Codes[row] != 0)
        .GroupBy(row => Tendency.Breakdown.Glossaries.Glossary.Key(Log.Category(ColumnNames.Formation)[row]), row => Log.Category(ColumnNames.Personnel)[row], StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => (string[])[.. group.GroupBy(word => word, StringComparer.Ordinal).OrderByDescending(g => g.Count()).Select(g => g.Key)], StringComparer.Ordinal))
        .GetValueOrDefault(formation, []);

    /// <summary>The call as charted.</summary>
    public CategoryColumn Calls { get; }

    /// <summary>The cell as written; empty when the row or the column is not there.</summary>
    public string Raw(int row, string column)
    {
        var file = _files[row];
        return _headers.TryGetValue(file, out var map) && _rows.TryGetValue((file, _lines[row] ?? 0), out var cells) ? map.Cell(cells, column) : "";
    }

    /// <summary>The cell of a row that may have been set aside.</summary>
    public string RawAt(string file, int line, string column) =>
        _headers.TryGetValue(file, out var map) && _rows.TryGetValue((file, line), out var cells) ? map.Cell(cells, column) : "";

    /// <summary>Whether a file writes the distance to the goal line as a word.</summary>
    public bool WritesGoal(string file) => _goalFiles.Contains(file);

    public Place Place(int row, string column)
    {
        var file = _files[row];
        return new Place(file, _lines[row] ?? 0, column.Length > 0 && _headers.TryGetValue(file, out var map) ? map.Written(column) : column);
    }

    public string File(int row) => _files[row];

    public int Line(int row) => _lines[row] ?? 0;

    /// <summary>Whether a row that could not be used stands between two rows of a file.</summary>
    public bool SetAsideBetween(int row, int next) => File(row) == File(next) && _setAside.ContainsKey(File(row))
        && FirstAfter(_setAside[File(row)], Math.Min(Line(row), Line(next))) < Math.Max(Line(row), Line(next));

    /// <summary>The row of the log that stands at a line, and the last one above it; null where there is none.</summary>
    public (int? At, int? Above) RowsAround(string file, int line)
    {
        if (!_rowsByFile.TryGetValue(file, out var rows))
        {
            return (null, null);
        }

        var index = Array.BinarySearch(rows, -1, Comparer<int>.Create((a, b) => (a < 0 ? line : Line(a)).CompareTo(b < 0 ? line : Line(b))));
        var above = (index < 0 ? ~index : index) - 1;
        return (index >= 0 ? rows[index] : null, above >= 0 ? rows[above] : null);
    }

    private static int FirstAfter(int[] lines, int line)
    {
        var index = Array.BinarySearch(lines, line + 1);
        index = index < 0 ? ~index : index;
        return index < lines.Length ? lines[index] : int.MaxValue;
    }

    /// <summary>A problem with one cell of a play.</summary>
    public Problem Cell(Rule rule, int row, string column, string message, string suggestion = "") =>
        new(rule, Place(row, column), Raw(row, column), $"Play {Log.Number(ColumnNames.Play)[row]}: {message}", suggestion);

    /// <summary>A problem with a game or a file as a whole, placed at its first row.</summary>
    public Problem Whole(Rule rule, int row, string column, string message, string suggestion = "") =>
        new(rule, Place(row, column), "", message, suggestion);

    /// <summary>The column of ours that a file's header names, or null.</summary>
    public ChartColumn? ColumnOf(string file, string header) =>
        _headers.TryGetValue(file, out var map) ? ColumnCatalogue.All.FirstOrDefault(column => map.Has(column.Name) && map.Written(column.Name) == header) : null;

    // A label of a row or two that is a slip for a whole game's: the rows are walked with their game, the word is reported as misspelt.
    private static Dictionary<string, string> MisspeltGames(CategoryColumn games)
    {
        var counts = new int[games.Levels.Count];
        foreach (var code in games.Codes)
        {
            counts[code]++;
        }

        var whole = games.Levels.Where((_, code) => counts[code] >= LeastWholeGame).Take(MostGames).ToArray();
        return games.Levels.Where((_, code) => counts[code] is > 0 and <= MostStrayRows).Take(MostGames)
            .Select(stray => (stray, Meant: Array.Find(whole, label => TypingSlip.Between(Tendency.Breakdown.Glossaries.Glossary.Key(stray), Tendency.Breakdown.Glossaries.Glossary.Key(label)))))
            .Where(pair => pair.Meant is not null).ToDictionary(pair => pair.stray, pair => pair.Meant!, StringComparer.Ordinal);
    }

    // A title may stand above the header: the header is the first row that names most of the required columns.
    private SheetRow? HeaderOf(Sheet sheet) => sheet.Rows.Take(MostTitleRows).FirstOrDefault(row =>
    {
        var map = HeaderMap.Read(sheet.File, row, Week, []);
        return ColumnCatalogue.All.Count(column => column.Required && map.Has(column.Name)) >= 3;
    });
}

/// <summary>One game's rows.</summary>
internal sealed record AuditedGame(string Name, IReadOnlyList<int> Rows);
