namespace Tendency.Breakdown.Weeks;

/// <summary>The week file's <c>[boundaries]</c>.</summary>
internal static class BoundaryTable
{
    public static Boundaries Read(WeekTable table)
    {
        var usual = new Boundaries();
        var boundaries = usual;
        foreach (var key in BoundaryKeys.All)
        {
            if (table.Whole(key.Key, key.Least, key.Most) is int value)
            {
                boundaries = key.With(boundaries, value);
            }
        }

        table.ReportUnknown();
        foreach (var group in BoundaryKeys.Rising)
        {
            boundaries = InOrder(table, [.. group.Select(name => BoundaryKeys.All.Single(key => key.Key == name))], boundaries, usual);
        }

        return boundaries;
    }

    private static Boundaries InOrder(WeekTable table, IReadOnlyList<BoundaryKey> group, Boundaries boundaries, Boundaries usual)
    {
        for (var i = 1; i < group.Count; i++)
        {
            var (before, after) = (group[i - 1], group[i]);
            if (before.Of(boundaries) < after.Of(boundaries))
            {
                continue;
            }

            var told = table.Keys.Contains(after.Key, StringComparer.Ordinal) ? after : before;
            table.Report(
                WeekRules.BoundariesOutOfOrder,
                told.Key,
                $"{told.Of(boundaries)}",
                $"{before.Key} is {before.Of(boundaries)} and {after.Key} is {after.Of(boundaries)}; each must be greater than the one before. {string.Join(", ", group.Select(key => key.Key))} keep their usual values.");
            return group.Aggregate(boundaries, (b, key) => key.With(b, key.Of(usual)));
        }

        return boundaries;
    }
}
