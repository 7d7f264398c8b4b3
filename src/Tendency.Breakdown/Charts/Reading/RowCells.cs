using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The cells of one row, understood one at a time; a cell that can not be read reports itself and counts as not charted.</summary>
internal sealed class RowCells(SheetRow row, ChartFile file, ICollection<Problem> problems)
{
    private static readonly ChartColumn[] s_required = [.. ColumnCatalogue.All.Where(column => column.Required)];
    private static readonly ChartColumn s_ballOn = ColumnCatalogue.Find(BallOn)!;
    private static readonly ChartColumn s_down = ColumnCatalogue.Find(ColumnNames.Down)!;
    private static readonly ChartColumn s_call = ColumnCatalogue.Find(Call)!;
    private static readonly System.Buffers.SearchValues<char> s_spaces = System.Buffers.SearchValues.Create(" \t\r\n\u00A0\u2007\u202F");

    /// <summary>Yards to the goal line, when the chart says where the ball is.</summary>
    public int? YardsToGoal { get; private set; }

    /// <summary>The yard line in canonical spelling; empty when not charted.</summary>
    public string YardLine => YardsToGoal is int yards ? CellReader.YardLine(yards) : "";

    /// <summary>Yards to gain; the word goal is resolved with the yard line.</summary>
    public int? Distance { get; private set; }

    /// <summary>Reads what the required cells need. False when one of them is blank or unreadable; each such cell has then been reported.</summary>
    public bool ReadRequired()
    {
        YardsToGoal = ReadYardLine();
        var readable = true;
        var toldOfColumn = false;
        foreach (var column in s_required)
        {
            var text = Raw(column);
            var reason = text.Length == 0 ? Blank(column) : Unreadable(column, text);
            if (reason is null)
            {
                continue;
            }

            // Of several columns that the chart lacks one is told a row, or the list would say little else.
            readable = false;
            var lacks = text.Length == 0 && !file.Headers.Has(column.Name);
            if (!lacks || !toldOfColumn)
            {
                Report(CellText.IsSpreadsheetDamage(text) ? ReadingRules.SpreadsheetDamage : ReadingRules.UnreadableRequiredCell, column, lacks ? $"the chart has no column {column.Name}." : reason, Before(text));
            }

            toldOfColumn |= lacks;
        }

        return readable;
    }

    public string Choice(ChartColumn column)
    {
        var text = Raw(column);
        var value = "";
        if (text.Length > 0 && !CellReader.TryChoice(column, text, out value))
        {
            ReportCell(column, text, $"it takes {string.Join(", ", column.Choices)}");
        }

        return value;
    }

    public string Personnel(ChartColumn column)
    {
        var text = Raw(column);
        if (text.Length == 0)
        {
            return "";
        }

        if (CellReader.TryPersonnel(text, out var value))
        {
            return value;
        }

        ReportCell(column, text, "write backs and tight ends as two digits, together at most five");
        return "";
    }

    public int? Number(ChartColumn column)
    {
        var text = Raw(column);
        if (text.Length == 0)
        {
            return null;
        }

        var read = column.Kind == CellKind.Clock ? CellReader.TryClock(column, text, out var value) : CellReader.TryNumber(column, text, out value);
        if (!read)
        {
            var takes = column.Kind == CellKind.Clock ? "it takes m:ss within a quarter of 15 minutes" : $"it takes whole numbers from {column.Least} to {column.Most}";
            ReportCell(column, text, takes);
        }

        return read ? value : null;
    }

    /// <summary>A word with its inner spaces made single.</summary>
    public string Word(ChartColumn column)
    {
        var text = Raw(column);
        if (text.StartsWith('#') && CellText.IsSpreadsheetDamage(text))
        {
            ReportCell(column, text, "a formula failed there");
            return "";
        }

        return text.AsSpan().ContainsAny(s_spaces) ? string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) : text;
    }

    public string Text(ChartColumn column) => Raw(column);

    public void Report(Rule rule, ChartColumn column, string message, string suggestion = "") =>
        problems.Add(new Problem(rule, new Place(file.Name, row.Line, file.Headers.Written(column.Name)), CellText.Shown(file.Headers.Cell(row, column.Name)), message, suggestion));

    private void ReportCell(ChartColumn column, string text, string takes)
    {
        var damaged = CellText.IsSpreadsheetDamage(text);
        var was = damaged && text[0] != '#' ? $", a date a spreadsheet made of {Before(text)}" : "";
        Report(damaged ? ReadingRules.SpreadsheetDamage : ReadingRules.UnreadableCell, column, $"{column.Name} is '{CellText.Shown(text)}'{was}; {takes}.", Before(text));
    }

    private static string Before(string text) => CellText.IsSpreadsheetDamage(text) ? CellText.PairBefore(text) : "";

    private string Raw(ChartColumn column)
    {
        var text = CellText.Plain(column, file.Headers.Cell(row, column.Name));
        return column.Name == Game && file.GameLabel.Length > 0 && (text.Length == 0 || file.LabelReplaces) ? file.GameLabel : text;
    }

    private int? ReadYardLine()
    {
        var text = Raw(s_ballOn);
        if (text.Length == 0)
        {
            return null;
        }

        if (CellReader.TryYardLine(text, file.BareYardLinesAreOpponents, out var yards))
        {
            return yards;
        }

        ReportCell(s_ballOn, text, "write own 25, 50 or opp 8");
        return null;
    }

    // A try and a snap that is no play for tendencies (kneel, spike, no play) have no distance to speak of.
    private string? Blank(ChartColumn column)
    {
        var isTry = CellReader.TryChoice(s_down, Raw(s_down), out var down) && down == "try";
        var isNoPlay = CellReader.TryChoice(s_call, Raw(s_call), out var call) && call == "none";
        return (column.Name == ColumnNames.Distance && (isTry || isNoPlay)) || (column.Name == ColumnNames.Down && isNoPlay)
            ? null
            : $"{column.Name} is blank.";
    }

    private string? Unreadable(ChartColumn column, string text)
    {
        switch (column.Kind)
        {
            case CellKind.Choice:
                return CellReader.TryChoice(column, text, out _) ? null : $"{column.Name} is '{CellText.Shown(text)}'; it takes {string.Join(", ", column.Choices)}.";
            case CellKind.Number:
                return CellReader.TryNumber(column, text, out _) ? null : $"{column.Name} is '{CellText.Shown(text)}'; it takes whole numbers from {column.Least} to {column.Most}.";
            case CellKind.Distance:
                if (!CellReader.TryDistance(column, text, out var yards))
                {
                    return $"distance is '{CellText.Shown(text)}'; it takes whole yards from 1 to 99, or goal.";
                }

                Distance = yards ?? YardsToGoal;
                return Distance is null ? "distance is goal, but ball_on does not say where the ball is." : null;
            default:
                return text[0] == '#' && CellText.IsSpreadsheetDamage(text) ? $"{column.Name} is '{text}': a formula failed there." : null;
        }
    }
}
