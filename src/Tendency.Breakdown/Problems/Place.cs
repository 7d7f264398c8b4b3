namespace Tendency.Breakdown.Problems;

/// <summary>Where in a chart something was seen.</summary>
/// <param name="File">The file's name as given, without its folder.</param>
/// <param name="Line">Physical line (or spreadsheet row), from 1; 0 when the whole file is meant.</param>
/// <param name="Column">The header as the file writes it; empty when the whole row is meant.</param>
public readonly record struct Place(string File, int Line, string Column)
{
    public override string ToString() =>
        (Line > 0 ? $"{File}:{Line}" : File) + (Column.Length > 0 ? $" {Column}" : "");
}
