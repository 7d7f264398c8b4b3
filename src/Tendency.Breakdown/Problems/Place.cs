namespace Tendency.Breakdown.Problems;

/// <summary>Where in a chart something was seen.</summary>
/// <param name="File">The file's name as given, without its folder.</param>
/// <param name="Line">Physical line (or spreadsheet row), from 1; 0 when the whole file is meant.</param>
/// <param name="Column">The header as the file writes it, or the key in a week file; empty when the whole row is meant.</param>
public readonly record struct Place(string File, int Line, string Column)
{
    /// <summary>Position in the line, from 1, where the place is a word of a text such as the week file; 0 for a cell.</summary>
    public int Character { get; init; }

    public override string ToString() =>
        (Line > 0 ? $"{File}:{Line}" : File) + (Character > 0 ? $":{Character}" : "") + (Column.Length > 0 ? $" {Column}" : "");
}
