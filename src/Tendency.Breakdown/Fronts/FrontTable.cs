using CsvHelper;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Fronts;

/// <summary>The rows of one front, scheme or rating file, with their lines, before anything is understood.</summary>
internal sealed class FrontTable
{
    private readonly string _file;
    private readonly List<Problem> _problems;

    private FrontTable(string file, List<Problem> problems)
    {
        _file = file;
        _problems = problems;
    }

    public List<FrontRow> Rows { get; } = [];

    /// <summary>Reads a delimited text with a header row. Headers are compared without case, spaces, _ and -.</summary>
    /// <returns>A table without rows, and a problem, when one of <paramref name="required"/> is missing.</returns>
    public static FrontTable Read(TextReader text, string file, IReadOnlyList<string> required, List<Problem> problems)
    {
        var table = new FrontTable(file, problems);
        var options = new CsvReaderOptions
        {
            TrackLineNumbers = true,
            TrimWhitespace = true,
            NormalizeHeaderName = Glossary.Key,
            MalformedData = CsvMalformedDataHandling.Skip,
            MissingField = CsvMissingFieldHandling.ReturnEmpty,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            OnMalformedRecord = m => table.Report(FrontRules.UnreadableRow, (int)m.LineNumber, "", "", "The row can not be split into cells."),
        };
        using var csv = CsvReader.Create(text, options, leaveOpen: true);
        csv.ReadHeader();
        var missing = required.Where(name => !csv.TryGetFieldIndex(name, out _)).ToArray();
        foreach (var name in missing)
        {
            table.Report(FrontRules.MissingColumn, 1, name, "", $"The column {name} is missing.");
        }

        if (missing.Length > 0)
        {
            return table;
        }

        var headers = csv.Headers.Select(h => h.Trim()).ToArray();
        while (csv.Read())
        {
            var cells = new Dictionary<string, string>(StringComparer.Ordinal);
            for (var i = 0; i < headers.Length && i < csv.FieldCount; i++)
            {
                _ = cells.TryAdd(Glossary.Key(headers[i]), csv.GetString(i));
            }

            if (cells.Values.Any(c => c.Length > 0))
            {
                table.Rows.Add(new FrontRow(table, (int)csv.LineNumber, cells));
            }
        }

        return table;
    }

    public void Report(Rule rule, int line, string column, string value, string message, string suggestion = "") =>
        _problems.Add(new Problem(rule, new Place(_file, line, column), value, message, suggestion));
}

/// <summary>One row; a cell that can not be read is reported with its line and makes the row unusable.</summary>
internal sealed class FrontRow(FrontTable table, int line, IReadOnlyDictionary<string, string> cells)
{
    /// <summary>False once a cell of this row was reported.</summary>
    public bool IsReadable { get; private set; } = true;

    public string Text(string column) => cells.GetValueOrDefault(Glossary.Key(column), "");

    public IReadOnlyList<string> Words(string column, char separator) =>
        Text(column).Split(separator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    public int Whole(string column, int low, int high, int blank)
    {
        var text = Text(column);
        if (text.Length == 0)
        {
            return blank;
        }

        if (int.TryParse(text, out var value) && value >= low && value <= high)
        {
            return value;
        }

        Fail(FrontRules.UnreadableValue, column, $"'{text}' is not a whole number from {low} to {high}.");
        return blank;
    }

    public double Number(string column, double low, double high, double blank)
    {
        var text = Text(column).Replace('\u2212', '-');
        if (text.Length == 0)
        {
            return blank;
        }

        if (double.TryParse(text, out var value) && value >= low && value <= high)
        {
            return value;
        }

        Fail(FrontRules.UnreadableValue, column, $"'{text}' is not a number from {low} to {high}.");
        return blank;
    }

    public T OneOf<T>(string column, IReadOnlyDictionary<string, T> words, T blank)
    {
        var text = Text(column);
        if (text.Length == 0)
        {
            return blank;
        }

        if (words.TryGetValue(text.ToLowerInvariant(), out var value))
        {
            return value;
        }

        Fail(FrontRules.UnreadableValue, column, $"'{text}' is none of: {string.Join(", ", words.Keys)}.", NearestWord.In(words.Keys, text) ?? "");
        return blank;
    }

    public void Fail(Rule rule, string column, string message, string suggestion = "")
    {
        IsReadable = false;
        table.Report(rule, line, column, Text(column), suggestion.Length == 0 ? message : $"{message} Did you mean '{suggestion}'?", suggestion);
    }
}
