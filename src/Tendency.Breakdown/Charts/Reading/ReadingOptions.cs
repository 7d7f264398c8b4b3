using Tendency.Breakdown.Charts.Corrections;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>How charts are read.</summary>
public sealed record ReadingOptions
{
    /// <summary>Sheet of a workbook to read; empty = the first.</summary>
    public string SheetName { get; init; } = "";

    /// <summary>Accepted changes, applied to the cells as they are read.</summary>
    public IReadOnlyList<Correction> Corrections { get; init; } = [];
}
