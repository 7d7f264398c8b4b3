namespace Tendency.Breakdown.Charts.Corrections;

/// <summary>A change of one cell: proposed by the audit, or accepted by a person.</summary>
/// <param name="File">The chart's file name, without its folder.</param>
/// <param name="Line">Physical line or spreadsheet row, from 1.</param>
/// <param name="Column">The header as the file writes it, or our name of the column.</param>
/// <param name="Old">What the cell must hold for the change to apply; empty = a blank cell.</param>
/// <param name="New">What is read instead; empty = the cell counts as not charted.</param>
public sealed record Correction(string File, int Line, string Column, string Old, string New);
