namespace Tendency.Breakdown.Audits;

/// <summary>A proposed change of one cell, for a person to accept.</summary>
/// <param name="File">The chart's name.</param>
/// <param name="Line">Physical line, from 1.</param>
/// <param name="Column">The header as the file writes it.</param>
/// <param name="Old">The cell as written.</param>
/// <param name="New">The value to write.</param>
public sealed record Correction(string File, int Line, string Column, string Old, string New);
