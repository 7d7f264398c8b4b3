using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Walks every drive of the charts and reports what does not follow.</summary>
/// <remarks>Holds the snaps as mended, so that the rules of single rows do not report the same slip again.</remarks>
internal sealed class DriveAudit
{
    private const int RoundedStepsLeast = 4;
    private const double RoundedShareLeast = 0.08;

    private const int MostMisfits = 20;
    private const int LongestDrive = 40;
    private const int LateSeconds = 40;

    private readonly AuditedCharts _charts;
    private readonly Dictionary<string, IReadOnlyList<int>> _orders = new(StringComparer.Ordinal);
    private readonly Dictionary<int, WalkedSnap> _next = [];
    private readonly List<(string Game, int[] Rows)> _drives = [];
    private readonly List<Problem> _problems = [];

    public DriveAudit(AuditedCharts charts)
    {
        _charts = charts;
        Snaps = [.. Enumerable.Range(0, charts.Log.Rows).Select(row => SnapReader.Read(charts, row))];
        var knowsResults = charts.Log.IsCharted(Result) || charts.Log.IsCharted(Touchdown);
        foreach (var game in charts.Games)
        {
            var order = FilmOrder(game, knowsResults);
            _orders[game.Name] = [.. order.Select(snap => snap.Row)];
            foreach (var offense in order.Where(snap => snap.Down is not null).GroupBy(snap => snap.Offense, StringComparer.Ordinal))
            {
                Walk(game, [.. offense], knowsResults);
            }
        }
    }

    /// <summary>One snap a row of the log, as mended.</summary>
    public WalkedSnap[] Snaps { get; }

    /// <summary>Rows whose gain the next snap's spot agrees with.</summary>
    public HashSet<int> Confirmed { get; } = [];

    private readonly HashSet<(int, int)> _steps = [];

    public IReadOnlyList<Problem> Problems => _problems;

    /// <summary>Whether the second row is the next snap of the first one's drive, nothing missing between.</summary>
    public bool Follows(int row, int next) => _steps.Contains((row, next));

    /// <summary>Rows of a game in the order of the film.</summary>
    public IReadOnlyList<int> Order(AuditedGame game) => _orders[game.Name];

    /// <summary>Rows of each drive of a game, as walked.</summary>
    public ILookup<string, int[]> Drives => field ??= _drives.ToLookup(drive => drive.Game, drive => drive.Rows);

    /// <summary>The next snap of the drive, or null.</summary>
    public WalkedSnap? After(int row) => _next.GetValueOrDefault(row);

    // The file's order, save that a row whose number does not fit goes where its number says if the drives then add up no worse:
    // the number may be the slip, or the row may stand in the wrong place.
    private WalkedSnap[] FilmOrder(AuditedGame game, bool knowsResults)
    {
        var order = game.Rows.Select(row => Snaps[row]).ToList();
        var misfits = PlayNumbers.Misfits([.. order.Select(snap => snap.Play)]).Select(at => order[at]).ToArray();
        if (misfits.Length > MostMisfits)
        {
            return [.. order.OrderBy(snap => snap.Play)];
        }

        foreach (var misfit in misfits)
        {
            var others = order.Where(snap => snap.Row != misfit.Row).ToList();
            var place = others.FindIndex(snap => (snap.Play > misfit.Play || (snap.Play == misfit.Play && snap.Row > misfit.Row)) && !misfits.Contains(snap));
            others.Insert(place < 0 ? others.Count : place, misfit);
            order = Broken(others) <= Broken(order) ? others : order;
        }

        return [.. order];

        int Broken(IEnumerable<WalkedSnap> snaps) => snaps.Where(snap => snap.Down is not null).GroupBy(snap => snap.Offense, StringComparer.Ordinal)
            .Sum(offense => DriveSplitter.Split([.. offense], 0, knowsResults).Sum(drive => drive.Broken()));
    }

    private void Walk(AuditedGame game, IReadOnlyList<WalkedSnap> snaps, bool knowsResults)
    {
        var drives = DriveSplitter.Split(snaps, 0, knowsResults);
        if (IsRounded(drives))
        {
            _problems.Add(_charts.Whole(DriveRules.Rounded, game.Rows[0], BallOn, $"{game.Name}: many spots are a yard off what the gains say; such steps are not reported."));
            drives = DriveSplitter.Split(snaps, 1, knowsResults);
        }

        var (mended, moved) = SeriesNumbers.Mend(drives);
        foreach (var (snap, series) in moved)
        {
            _problems.Add(_charts.Cell(DriveRules.WrongSeries, snap.Row, Series, $"series {snap.Series} does not add up here; the snap belongs to series {series}.", $"{series}"));
        }

        for (var at = 0; at + 1 < mended.Count && knowsResults; at++)
        {
            ReportStop(mended[at], mended[at + 1]);
        }

        foreach (var drive in mended.SelectMany(Pieces))
        {
            ReportHalftime(drive);
            var (repairs, after) = RepairSearch.Mend(WithKnownGaps(drive));
            foreach (var row in repairs.GroupBy(repair => RowOf(repair)))
            {
                // Two cells of one row that do not follow: no single slip, so no value is proposed.
                _problems.Add(row.Count() == 1 ? DriveFindings.Of(_charts, row.First()) : DriveFindings.SeveralCells(_charts, [.. row]));
            }

            if (after.Start() > 0 && after.Snaps[0] is { Down: 1 } first)
            {
                _problems.Add(_charts.Cell(RowRules.FirstDownDistance, first.Row, Distance, $"the series starts with 1 & {first.ToGo}; was there a flag before?"));
            }

            Enumerable.Range(0, after.Snaps.Count - 1).Where(at => after.Link(at) > 0).ToList().ForEach(at => _problems.Add(DriveFindings.Unmended(_charts, after, at)));
            _drives.Add((game.Name, [.. after.Snaps.Select(snap => snap.Row)]));
            for (var at = 0; at < after.Snaps.Count; at++)
            {
                Snaps[after.Snaps[at].Row] = after.Snaps[at];
                if (at + 1 < after.Snaps.Count)
                {
                    _next[after.Snaps[at].Row] = after.Snaps[at + 1];
                }

                if (at + 1 < after.Snaps.Count && !after.Gaps.Contains(at) && after.Link(at) == 0)
                {
                    _ = _steps.Add((after.Snaps[at].Row, after.Snaps[at + 1].Row));
                }

                if (at + 1 < after.Snaps.Count && after.Snaps[at + 1].ToGoal is not null && !after.Gaps.Contains(at) && after.Link(at) == 0)
                {
                    _ = Confirmed.Add(after.Snaps[at].Row);
                }
            }
        }
    }

    private static bool IsRounded(IReadOnlyList<Drive> drives)
    {
        var (steps, off) = (0, 0);
        foreach (var drive in drives)
        {
            var loose = drive with { Slack = 1 };
            for (var at = 0; at + 1 < drive.Snaps.Count; at++)
            {
                steps++;
                off += drive.Link(at) > 0 && loose.Link(at) == 0 ? 1 : 0;
            }
        }

        return off >= RoundedStepsLeast && off > RoundedShareLeast * steps;
    }

    // No series is so long; what is charted as one is walked in pieces, so that time grows with the rows and not with their square.
    private static IEnumerable<Drive> Pieces(Drive drive) =>
        drive.Snaps.Count <= LongestDrive ? [drive] : drive.Snaps.Chunk(LongestDrive).Select((snaps, at) => drive with { Snaps = snaps, KnowsStart = at == 0 && drive.KnowsStart });

    // Where a row was set aside the reader has said so; the walk does not miss it again.
    private Drive WithKnownGaps(Drive drive)
    {
        var gaps = Enumerable.Range(0, drive.Snaps.Count - 1).Where(at => _charts.SetAsideBetween(drive.Snaps[at].Row, drive.Snaps[at + 1].Row)).ToHashSet();
        var first = drive.Snaps[0].Row;
        return drive with { Gaps = gaps, GapBefore = first > 0 && _charts.SetAsideBetween(first - 1, first) };
    }

    private static int RowOf(Repair repair) => repair.Before.Snaps[Math.Max(0, repair.At)].Row + (repair.Kind is RepairKind.MissingSnap ? -1_000_000 : 0);

    private void ReportStop(Drive drive, Drive next)
    {
        var last = drive.Snaps[^1];
        var sameHalf = last.Quarter is int one && next.Snaps[0].Quarter is int two && one <= 2 == two <= 2 && two <= 4;
        var late = last.Quarter is 2 or 4 && last.Clock is null or <= LateSeconds;
        if (sameHalf && !late && drive.Snaps[0].Series is not null && last is { Down: >= 3, Effect: "", Touchdown: false, Result: "rush" or "complete" or "scramble" }
            && last.Gain is int gain && gain >= last.ToGo && gain < last.ToGoal
            && !_charts.SetAsideBetween(last.Row, next.Snaps[0].Row))
        {
            _problems.Add(_charts.Cell(DriveRules.StopsAfterFirstDown, last.Row, Gain, $"a gain of {gain} on {last.Down} & {last.ToGo} is a first down, but the series stops here."));
        }
    }

    private void ReportHalftime(Drive drive)
    {
        for (var at = 0; at + 1 < drive.Snaps.Count; at++)
        {
            if (drive.Snaps[at].Quarter is 1 or 2 && drive.Snaps[at + 1].Quarter is 3 or 4
                && drive.Snaps.Take(at).All(snap => snap.Quarter is null or <= 2) && drive.Snaps.Skip(at + 2).All(snap => snap.Quarter is null or >= 3))
            {
                _problems.Add(_charts.Cell(DriveRules.HalftimeInside, drive.Snaps[at + 1].Row, Series, $"series {drive.Snaps[at].Series} goes on after halftime."));
            }
        }
    }
}
