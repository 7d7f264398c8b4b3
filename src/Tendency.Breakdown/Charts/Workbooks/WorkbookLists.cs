using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Workbooks;

/// <summary>What a cell of a column is offered in its drop-down.</summary>
internal static class WorkbookLists
{
    private static readonly string[] s_personnel = ["00", "01", "10", "11", "12", "13", "20", "21", "22", "23", "30", "31", "32"];

    /// <summary>The values in the order of the list; none = no drop-down.</summary>
    public static IReadOnlyList<string> Of(ChartColumn column, Glossary glossary) => column.Kind switch
    {
        CellKind.Choice => column.Choices,
        CellKind.YardLine => [.. Enumerable.Range(1, 99).Reverse().Select(CellReader.YardLine)],
        CellKind.Personnel => s_personnel,
        CellKind.Word when column.Name == ColumnNames.Formation => Words(glossary, "formation", column.GlossaryKind),
        CellKind.Word when column.Name == ColumnNames.Motion => ["none", .. Words(glossary, column.GlossaryKind).Where(word => word != "none")],
        CellKind.Word when column.GlossaryKind.Length > 0 => Words(glossary, column.GlossaryKind),
        _ => [],
    };

    /// <summary>Whether only the listed values may be written; words of a staff's own always may.</summary>
    public static bool IsClosed(ChartColumn column) => column.Kind == CellKind.Choice;

    private static IReadOnlyList<string> Words(Glossary glossary, params string[] kinds) =>
        [.. glossary.Terms.Where(term => kinds.Contains(term.Kind)).OrderBy(term => !term.FromStaff).Select(term => term.Canonical).Distinct(StringComparer.Ordinal)];
}
