using System.Globalization;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Says in a sentence what a repair would mend.</summary>
internal static class DriveFindings
{
    public static Problem Of(AuditedCharts charts, Repair repair) => repair.Kind switch
    {
        RepairKind.MissingSnap => Missing(charts, repair),
        RepairKind.DuplicateSnap => Row(charts, DriveRules.DuplicateSnap, repair.Before.Snaps[repair.At],
            $"is the same snap as play {repair.Before.Snaps[repair.At - 1].Play}; the drive adds up without it.", "delete the row"),
        RepairKind.SwappedSnaps => Row(charts, DriveRules.SwappedSnaps, repair.Before.Snaps[repair.At],
            $"changed places with play {repair.Before.Snaps[repair.At + 1].Play}: the drive adds up the other way round.", $"exchange with play {repair.Before.Snaps[repair.At + 1].Play}"),
        _ => Cell(charts, repair),
    };

    /// <summary>A step that no single change mends.</summary>
    public static Problem Unmended(AuditedCharts charts, Drive drive, int at)
    {
        var (snap, next) = (drive.Snaps[at], drive.Snaps[at + 1]);
        if (NextSnap.After(snap, drive.Slack).Ends)
        {
            return charts.Cell(DriveRules.MustEnd, next.Row, ColumnNames.Series, $"the series was over with play {snap.Play} ({Ending(snap)}), yet it goes on.");
        }

        var expected = drive.Expected(at)!.Value;
        return charts.Cell(DriveRules.DoesNotFollow, next.Row, ColumnNames.Down, $"after play {snap.Play} ({State(snap)}, gain {snap.Gained}) it should be {State(expected)}, not {State(next)}.");
    }

    /// <summary>Several cells of one row that do not follow.</summary>
    public static Problem SeveralCells(AuditedCharts charts, IReadOnlyList<Repair> repairs)
    {
        var first = repairs[0];
        var snap = first.Before.Snaps[Math.Max(0, first.At)];
        var before = first.At > 0 ? $"after play {first.Before.Snaps[first.At - 1].Play} ({State(first.Before.Snaps[first.At - 1])}, gain {first.Before.Snaps[first.At - 1].Gained}) " : "";
        var values = string.Join(", ", repairs.Select(repair => $"{repair.Column} {(repair.Value.Length > 0 ? repair.Value : "blank")}"));
        return charts.Cell(DriveRules.DoesNotFollow, snap.Row, first.Column, $"{before}{State(snap)} does not add up; {values} would.", "");
    }

    private static Problem Cell(AuditedCharts charts, Repair repair)
    {
        var snap = repair.Before.Snaps[repair.At];
        var typed = charts.Raw(snap.Row, repair.Column);
        if (repair.Kind == RepairKind.Distance && repair.Mended.Snaps[repair.At].ToGo == snap.ToGoal && charts.WritesGoal(charts.File(snap.Row)))
        {
            repair = repair with { Value = "goal" };
        }

        if (OfRowAlone(repair, snap) is { } alone)
        {
            return charts.Cell(alone, snap.Row, repair.Column, $"{snap.Result} with a gain of {snap.Gain}.", repair.Value);
        }

        var rule = OneYard(repair, snap) ? DriveRules.OffByOne : RuleOf(repair.Kind);
        var should = repair.Value.Length > 0 ? $"'{repair.Value}'" : "blank";
        return charts.Cell(rule, snap.Row, repair.Column, $"{repair.Column} is {(typed.Length > 0 ? $"'{typed}'" : "blank")}, but {Reason(repair)}; {should} makes the drive add up.", repair.Value);
    }

    private static string Reason(Repair repair)
    {
        var drive = repair.Before;
        var (at, snap) = (repair.At, repair.Before.Snaps[repair.At]);
        var fromBefore = at > 0 && drive.Link(at - 1) > 0;
        if (!fromBefore && at + 1 < drive.Snaps.Count && drive.Link(at) > 0)
        {
            var next = drive.Snaps[at + 1];
            var leads = drive.Expected(at) is { } expected ? $"this snap leads to {State(expected)}" : $"the series ends here ({Ending(snap)})";
            return $"{leads} and play {next.Play} is {State(next)}";
        }

        return fromBefore && drive.Expected(at - 1) is { } due ? $"play {drive.Snaps[at - 1].Play} leads to {State(due)}"
            : fromBefore ? $"play {drive.Snaps[at - 1].Play} ended the series"
            : at == 0 && drive.Start() > 0 ? "a series starts with first and ten or goal"
            : repair.Kind == RepairKind.Touchdown ? $"the gain of {snap.Gain} {(snap.Touchdown ? "does not reach" : "reaches")} the goal line"
            : snap.Touchdown ? $"a touchdown from {snap.ToGoal} yards out gains as many"
            : "it contradicts the other cells of the row";
    }

    private static Problem Missing(AuditedCharts charts, Repair repair)
    {
        var drive = repair.Before;
        var next = drive.Snaps[repair.At + 1];
        return repair.At < 0
            ? Row(charts, DriveRules.MissingSnap, next, $"the series starts with {State(next)}; its first snap seems to be missing.", "chart the snap before")
            : Row(charts, DriveRules.MissingSnap, next,
                $"play {drive.Snaps[repair.At].Play} leads to {(drive.Expected(repair.At) is { } due ? State(due) : "another snap")}, this is {State(next)}; a snap or a flag seems to be missing between them.",
                $"chart the snap after play {drive.Snaps[repair.At].Play}");
    }

    private static Problem Row(AuditedCharts charts, Rule rule, WalkedSnap snap, string message, string suggestion) =>
        charts.Cell(rule, snap.Row, ColumnNames.Play, message, suggestion);

    private static Rule RuleOf(RepairKind kind) => kind switch
    {
        RepairKind.Down => DriveRules.WrongDown,
        RepairKind.Distance => DriveRules.WrongDistance,
        RepairKind.BallOn => DriveRules.WrongSpot,
        RepairKind.Gain => DriveRules.WrongGain,
        RepairKind.Result => DriveRules.WrongResult,
        RepairKind.Touchdown => DriveRules.WrongTouchdown,
        _ => DriveRules.WrongFlag,
    };

    // A slip that the row shows by itself, whatever comes next.
    private static Rule? OfRowAlone(Repair repair, WalkedSnap snap) => (repair.Kind, snap.Result) switch
    {
        (RepairKind.Gain, "incomplete") when repair.Value == "0" => RowRules.IncompleteGain,
        (RepairKind.Gain, "sack") when snap.Gain > 0 => RowRules.SackGain,
        (RepairKind.Gain, "interception") when repair.Value == "0" => RowRules.InterceptionGain,
        _ => null,
    };

    private static bool OneYard(Repair repair, WalkedSnap typed)
    {
        var meant = repair.Mended.Snaps[repair.At];
        return repair.Kind switch
        {
            RepairKind.Distance => Math.Abs(typed.Distance!.Value - meant.Distance!.Value) == 1,
            RepairKind.BallOn => Math.Abs(typed.ToGoal!.Value - meant.ToGoal!.Value) == 1,
            RepairKind.Gain => Math.Abs(typed.Gain!.Value - meant.Gain!.Value) == 1,
            _ => false,
        };
    }

    private static string Ending(WalkedSnap snap) =>
        snap.Touchdown ? "touchdown" : snap.Result == "interception" ? "interception" : snap.Down == 4 ? "fourth down failed" : "ball at the goal line";

    private static string State(WalkedSnap snap) => State(snap.Down, snap.ToGo, snap.ToGoal);

    private static string State(NextState state) => State(state.Down, state.ToGo, state.ToGoal);

    private static string State(int? down, int? toGo, int? toGoal)
    {
        var at = toGoal is >= 1 and <= 99 ? $" at {CellReader.YardLine(toGoal.Value)}" : "";
        return $"{Text(down)} & {(toGo == toGoal && toGo is not null ? "goal" : Text(toGo))}{at}";
    }

    private static string Text(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "?";
}
