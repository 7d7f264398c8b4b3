using System.Globalization;
using Tendency.Breakdown.Audits.Drives;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.RowRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about ball, gain and flag of a row, on the snaps as the drive walk mended them.</summary>
internal static class BallChecks
{
    private const double NearlyAlways = 0.9;

    public static IEnumerable<Problem> Run(AuditedCharts charts, DriveAudit walk) =>
        walk.Snaps.SelectMany(snap => Of(charts, snap, walk)).Concat(charts.Games.SelectMany(game => Blank(charts, walk, game)));

    private static IEnumerable<Problem> Blank(AuditedCharts charts, DriveAudit walk, AuditedGame game)
    {
        if (!charts.Log.IsCharted(Result))
        {
            // A flag that wiped the play out could not be told from a gain left blank.
            yield break;
        }

        var plays = game.Rows.Select(row => walk.Snaps[row])
            .Where(snap => snap.Down is not null && snap.Call is "run" or "pass" or "rpo" && snap.Effect is not ("replay" or "offset") && snap.Result is not ("penalty" or "incomplete" or "interception" or "fumble")).ToArray();
        var blank = plays.Where(snap => snap.Gain is null && charts.Raw(snap.Row, Gain).Length == 0).ToArray();
        foreach (var snap in plays.Length - blank.Length >= NearlyAlways * plays.Length ? blank : [])
        {
            yield return charts.Cell(GainBlank, snap.Row, Gain, "the gain is blank.", Moved(snap, walk.After(snap.Row)) is int moved ? Text(moved) : "");
        }
    }

    /// <summary>Yards between a snap and the next of its drive; null when the charts do not say.</summary>
    internal static int? Moved(WalkedSnap snap, WalkedSnap? next) =>
        snap is { Touchdown: true, ToGoal: int left } ? left
        : next is null || snap.Effect.Length > 0 ? null
        : snap.ToGoal - next.ToGoal ?? (next.Down == snap.Down + 1 ? snap.ToGo - next.ToGo : null);

    private static IEnumerable<Problem> Of(AuditedCharts charts, WalkedSnap snap, DriveAudit walk)
    {
        var row = snap.Row;
        var plays = snap.Effect is not ("replay" or "offset") && snap.Result != "penalty";
        if (snap.ToGoal is int left && snap.Down is not null)
        {
            if (snap.Distance > left)
            {
                yield return charts.Cell(DistanceBeyondGoal, row, Distance, $"{snap.Distance} to go, but only {left} yards to the goal line.", snap.Down == 1 ? Text(Math.Min(10, left)) : "");
            }

            if (snap.Gain > left)
            {
                yield return charts.Cell(GainBeyondGoal, row, Gain, $"gain of {snap.Gain} from {left} yards out.", snap.Touchdown ? Text(left) : "");
            }
            else if (snap.Gain < left - 100)
            {
                yield return charts.Cell(LossBeyondGoal, row, Gain, $"a loss of {-snap.Gain} from the own {100 - left}.");
            }
            else if (plays && snap is { Touchdown: true, Result: "rush" or "complete" or "scramble", Gain: int gained } && gained != left)
            {
                yield return charts.Cell(TouchdownGain, row, Gain, $"a touchdown from {left} yards out gains {left}, not {gained}.", Text(left));
            }
        }

        if (snap.Gain is int gain && plays)
        {
            if (snap.Result == "incomplete" && gain != 0)
            {
                yield return charts.Cell(IncompleteGain, row, Gain, $"an incomplete pass with a gain of {gain}.", "0");
            }
            else if (snap.Result == "sack" && gain > 0)
            {
                yield return charts.Cell(SackGain, row, Gain, $"a sack with a gain of {gain}.", Text(-gain));
            }
            else if (snap.Result == "interception" && gain != 0)
            {
                yield return charts.Cell(InterceptionGain, row, Gain, $"an interception with a gain of {gain}.", "0");
            }

            if (gain is >= 50 or <= -15 && !snap.Touchdown && !walk.Confirmed.Contains(row) && (snap.ToGoal is not int from || gain < from))
            {
                yield return charts.Cell(LongGain, row, Gain, $"{gain} yards; please confirm.");
            }
        }

        if (snap.Effect == "replay" && snap is { PenaltyOn: "offense", PenaltyYards: int yards, ToGoal: int spot } && Math.Abs(yards) > ((100 - spot) + 1) / 2)
        {
            yield return charts.Cell(PenaltyTooLong, row, PenaltyYards, $"{Math.Abs(yards)} yards from the own {100 - spot} is more than half the distance.", Text(((100 - spot) + 1) / 2));
        }

        foreach (var column in HalfFlag(snap))
        {
            yield return charts.Cell(PenaltyHalf, row, column, $"a flag without {column}.", Fitting(snap, column, walk.After(row)));
        }
    }

    private static IEnumerable<string> HalfFlag(WalkedSnap snap)
    {
        if (snap.PenaltyOn.Length == 0 && snap.PenaltyYards is null && snap.Effect.Length == 0)
        {
            yield break;
        }

        if (snap.PenaltyOn.Length == 0 && snap.Effect != "offset")
        {
            yield return PenaltyOn;
        }
        else if (snap.Effect.Length == 0)
        {
            yield return PenaltyEffect;
        }
        else if (snap.PenaltyYards is null && snap.Effect is "replay" or "added on")
        {
            yield return PenaltyYards;
        }
    }

    // The one value of the blank cell after which the next snap follows; empty when several do.
    private static string Fitting(WalkedSnap snap, string column, WalkedSnap? next)
    {
        if (next is null)
        {
            return "";
        }

        (string Value, WalkedSnap Snap)[] tries = column switch
        {
            PenaltyOn => [("offense", snap with { PenaltyOn = "offense" }), ("defense", snap with { PenaltyOn = "defense" })],
            PenaltyEffect => [.. new[] { "replay", "declined", "added on", "offset" }.Select(effect => (effect, snap with { Effect = effect }))],
            _ => [.. new[] { 5, 10, 15 }.Select(yards => (Text(yards), snap with { PenaltyYards = yards }))],
        };
        var fitting = tries.Where(t => NextSnap.After(t.Snap, 0).States is { Count: > 0 } states && states.Any(state => Drive.Mismatch(state, next, 0) == 0)).ToArray();
        return fitting.Length == 1 ? fitting[0].Value : "";
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
