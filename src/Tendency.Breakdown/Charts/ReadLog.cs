using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts;

/// <summary>Everything that reading charts gave: the plays it could use and every problem it met.</summary>
/// <param name="Plays">One row a readable snap, in chart order; call <c>none</c>, tries and both teams' snaps included.</param>
/// <param name="Problems">In the order of files and lines.</param>
/// <param name="RowsRead">Rows below the header that were not blank.</param>
/// <param name="RowsLeftOut">Rows that are no snaps: repeated headers, totals.</param>
/// <param name="RowsSetAside">Rows that lack a readable required cell; each has its problem, up to the list's ceiling.</param>
/// <param name="Sheets">The cells as written, for the audit and for the list of set-aside rows.</param>
public sealed record ReadLog(
    PlayLog Plays, IReadOnlyList<Problem> Problems, int RowsRead, int RowsLeftOut, int RowsSetAside, IReadOnlyList<Reading.Sheet> Sheets);
