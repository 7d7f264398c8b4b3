namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Finds, for a drive that does not add up, the fewest single changes that make it add up.</summary>
/// <remarks>
/// Each broken step offers every change of one cell or row near it; the change after which most cells agree again is taken, the likelier slip
/// first among equals, until nothing is broken or nothing helps.
/// </remarks>
internal static class RepairSearch
{
    // A drive that needs more changes than this is not charted, it is scrambled: its steps are reported one by one.
    private const int MostRepairs = 6;
    private const int MostBroken = 24;

    /// <returns>The repairs in the order they were found, and the drive with all of them made; its broken steps are those without a repair.</returns>
    public static (IReadOnlyList<Repair> Repairs, Drive Mended) Mend(Drive drive)
    {
        var repairs = new List<Repair>();
        var current = drive;
        while (repairs.Count < MostRepairs && current.Broken() is var broken and > 0 and <= MostBroken && Best(current, broken) is { } best)
        {
            repairs.Add(best);
            current = best.Mended;
        }

        return (repairs, current);
    }

    // A change of a cell touches the steps to and from its snap only.
    private static int Explained(Repair repair, Drive drive, int broken)
    {
        if (repair.Mended.Snaps.Count != drive.Snaps.Count)
        {
            return broken - repair.Mended.Broken();
        }

        var explained = 0;
        for (var at = Math.Max(0, repair.At - 1); at <= Math.Min(drive.Snaps.Count - 1, repair.At + 2); at++)
        {
            explained += drive.BrokenAt(at) - repair.Mended.BrokenAt(at);
        }

        return explained;
    }

    // A row that contradicts itself is left to the rules of rows unless its result says which cell is wrong.
    private static bool TellsItself(Repair repair) =>
        repair.Kind is RepairKind.Penalty or RepairKind.Result || (repair.Kind == RepairKind.Touchdown && repair.Value.Length > 0) || (repair.Kind == RepairKind.Gain && repair.Before.Snaps[repair.At].Result is "incomplete" or "sack" or "interception");

    private static Repair? Best(Drive drive, int broken)
    {
        var steps = drive.BrokenSteps();
        var near = new SortedSet<int>();
        for (var at = 0; at < drive.Snaps.Count; at++)
        {
            if (drive.BrokenAt(at) > 0)
            {
                near.UnionWith([Math.Max(0, at - 2), Math.Max(0, at - 1), at, Math.Min(drive.Snaps.Count - 1, at + 1)]);
            }
        }

        return near.SelectMany(at => CellRepairs.Of(drive, at).Concat(RowRepairs.Of(drive, at)))
            .Select(repair => repair with { Before = drive, Explains = Explained(repair, drive, broken) })
            .Where(repair => repair.Explains > 0 && (repair.Mended.BrokenSteps() < steps || TellsItself(repair)))
            .OrderByDescending(repair => repair.Worth)
            .FirstOrDefault();
    }
}
