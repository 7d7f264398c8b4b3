namespace Tendency.Output;

/// <summary>Data on its way out: named columns and rows of text, whole numbers, fractions, or null where a value is not defined.</summary>
/// <param name="Columns">Names, as the contract fixes them.</param>
/// <param name="Rows">One value a column: string, int, double for a share, decimal for a number that is none, or null.</param>
internal sealed record OutputTable(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows);
