using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The cells of one row, understood one at a time; a cell that can not be read reports itself and counts as not charted.</summary>
internal sealed class RowCells(string file, SheetRow row, HeaderMap headers, string gameLabel, List<Problem> problems)
{
    private static readonly string[] s_required = [Game, Play, ColumnNames.Down, ColumnNames.Distance, Call];

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
        foreach (var name in s_required)
        {
            var column = ColumnCatalogue.Find(name)!;
            var text = Raw(column);
            var reason = text.Length == 0 ? Blank(column) : Unreadable(column, text);
            if (reason is not null)
            {
                readable = false;
                Report(ReadingRules.UnreadableRequiredCell, column, reason);
            }
        }

        return readable;
    }

    public string Choice(ChartColumn column)
    {
        var text = Raw(column);
        if (text.Length == 0 || CellReader.TryChoice(column, text, out var value))
        {
            return text.Length == 0 ? "" : Chosen(column, text);
        }

        Report(ReadingRules.UnreadableCell, column, $"{column.Name} is '{text}'; it takes {string.Join(", ", column.Choices)}.");
        return value;
    }

    public string Personnel(ChartColumn column)
    {
        var text = Raw(column);
        if (text.Length > 0 && !CellReader.TryPersonnel(text, out _))
        {
            Report(ReadingRules.UnreadableCell, column, $"personnel is '{text}'; write backs and tight ends as two digits, together at most five.");
            return "";
        }

        return text.Length > 0 && CellReader.TryPersonnel(text, out var value) ? value : "";
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
            Report(ReadingRules.UnreadableCell, column, $"{column.Name} is '{text}'; {takes}.");
        }

        return read ? value : null;
    }

    /// <summary>A word with its inner spaces made single.</summary>
    public string Word(ChartColumn column) => string.Join(' ', Raw(column).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public string Text(ChartColumn column) => Raw(column);

    public void Report(Rule rule, ChartColumn column, string message) =>
        problems.Add(new Problem(rule, new Place(file, row.Line, headers.Written(column.Name)), headers.Cell(row, column.Name), message));

    private string Raw(ChartColumn column)
    {
        var text = headers.Cell(row, column.Name);
        return text.Length == 0 && column.Name == Game ? gameLabel : text;
    }

    private static string Chosen(ChartColumn column, string text)
    {
        _ = CellReader.TryChoice(column, text, out var value);
        return value;
    }

    private int? ReadYardLine()
    {
        var column = ColumnCatalogue.Find(BallOn)!;
        var text = Raw(column);
        if (text.Length == 0)
        {
            return null;
        }

        if (CellReader.TryYardLine(text, out var yards))
        {
            return yards;
        }

        Report(ReadingRules.UnreadableCell, column, $"ball_on is '{text}'; write own 25, 50 or opp 8.");
        return null;
    }

    // A try and a snap that is no play for tendencies (kneel, spike, no play) have no distance to speak of.
    private string? Blank(ChartColumn column)
    {
        var isTry = CellReader.TryChoice(ColumnCatalogue.Find(ColumnNames.Down)!, headers.Cell(row, ColumnNames.Down), out var down) && down == "try";
        var isNoPlay = CellReader.TryChoice(ColumnCatalogue.Find(Call)!, headers.Cell(row, Call), out var call) && call == "none";
        return (column.Name == ColumnNames.Distance && (isTry || isNoPlay)) || (column.Name == ColumnNames.Down && isNoPlay)
            ? null
            : $"{column.Name} is blank.";
    }

    private string? Unreadable(ChartColumn column, string text)
    {
        switch (column.Kind)
        {
            case CellKind.Choice:
                return CellReader.TryChoice(column, text, out _) ? null : $"{column.Name} is '{text}'; it takes {string.Join(", ", column.Choices)}.";
            case CellKind.Number:
                return CellReader.TryNumber(column, text, out _) ? null : $"{column.Name} is '{text}'; it takes whole numbers from {column.Least} to {column.Most}.";
            case CellKind.Distance:
                if (!CellReader.TryDistance(column, text, out var yards))
                {
                    return $"distance is '{text}'; it takes whole yards from 1 to 99, or goal.";
                }

                Distance = yards ?? YardsToGoal;
                return Distance is null ? "distance is goal, but ball_on does not say where the ball is." : null;
            default:
                return null;
        }
    }
}
