namespace Tendency.Breakdown.Charts;

/// <summary>What became of every row: <c>Read = Used + LeftOut + SetAside</c>, always.</summary>
public readonly record struct RowTally(int Read, int Used, int LeftOut, int SetAside)
{
    public override string ToString() => $"rows {Read} = used {Used} + left out {LeftOut} + set aside {SetAside}";
}
