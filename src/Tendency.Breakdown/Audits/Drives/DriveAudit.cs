using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Walks every drive of the charts and reports what does not follow.</summary>
/// <remarks>Holds the snaps as mended, so that the rules of single rows do not report the same slip again.</remarks>
internal sealed class DriveAudit
{
    private const int RoundedStepsLeast = 4;
    private const double RoundedShareLeast = 0.08;

    private readonly AuditedCharts _charts;
    private readonly List<Problem> _problems = [];

    public DriveAudit(AuditedCharts charts)
    {
        _charts = charts;
        Snaps = [.. Enumerable.Range(0, charts.Log.Rows).Select(row => SnapReader.Read(charts, row))];
        var knowsResults = charts.Log.IsCharted(Result) || charts.Log.IsCharted(Touchdown);
        foreach (var game in charts.Games)
        {
            foreach (var offense in FilmOrder(game, knowsResults).GroupBy(snap => snap.Offense, StringComparer.Ordinal))
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

    // The file's order unless the play numbers give one that adds up better: a number may be a slip, a row may stand in the wrong place.
    private WalkedSnap[] FilmOrder(AuditedGame game, bool knowsResults)
    {
        var asFiled = game.Rows.Select(row => Snaps[row]).Where(snap => snap.Down is not null).ToArray();
        if (PlayNumbers.Misfits([.. asFiled.Select(snap => snap.Play)]).Count == 0)
        {
            return asFiled;
        }

        var byNumber = asFiled.OrderBy(snap => snap.Play).ToArray();
        return Broken(byNumber) <= Broken(asFiled) ? byNumber : asFiled;

        int Broken(IEnumerable<WalkedSnap> snaps) =>
            snaps.GroupBy(snap => snap.Offense, StringComparer.Ordinal).Sum(offense => DriveSplitter.Split([.. offense], 0, knowsResults).Sum(drive => drive.Broken()));
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

        foreach (var drive in mended)
        {
            ReportHalftime(drive);
            var (repairs, after) = RepairSearch.Mend(drive);
            foreach (var repair in repairs)
            {
                _problems.Add(DriveFindings.Of(_charts, repair));
            }

            Enumerable.Range(0, after.Snaps.Count - 1).Where(at => after.Link(at) > 0).ToList().ForEach(at => _problems.Add(DriveFindings.Unmended(_charts, after, at)));
            for (var at = 0; at < after.Snaps.Count; at++)
            {
                Snaps[after.Snaps[at].Row] = after.Snaps[at];
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

    private void ReportHalftime(Drive drive)
    {
        for (var at = 0; at + 1 < drive.Snaps.Count; at++)
        {
            if (drive.Snaps[at].Quarter is 1 or 2 && drive.Snaps[at + 1].Quarter is 3 or 4 && drive.Link(at) > 0)
            {
                _problems.Add(_charts.Cell(DriveRules.HalftimeInside, drive.Snaps[at + 1].Row, Series, $"series {drive.Snaps[at].Series} goes on after halftime."));
            }
        }
    }
}
