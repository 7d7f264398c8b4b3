using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Workbooks;

/// <summary>What a column takes, in a line.</summary>
internal static class ColumnValues
{
    public static string Of(ChartColumn column) => column.Kind switch
    {
        CellKind.Choice => string.Join(", ", column.Choices),
        CellKind.Number => $"whole number, {column.Least} to {column.Most}",
        CellKind.Clock => "m:ss",
        CellKind.Distance => $"whole yards, {column.Least} to {column.Most}, or goal",
        CellKind.YardLine => "own 1 to own 49, 50, opp 49 to opp 1; -35 is own 35, +35 is opp 35",
        CellKind.Personnel => "two digits: backs, tight ends",
        CellKind.Word when column.GlossaryKind.Length > 0 => "a word of the sheet words, or your own",
        _ => "text",
    };
}
