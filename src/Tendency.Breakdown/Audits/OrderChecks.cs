using System.Globalization;
using Tendency.Breakdown.Audits.Drives;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.PairRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about play numbers, quarters and clock.</summary>
internal static class OrderChecks
{
    public static IEnumerable<Problem> Run(AuditedCharts charts, DriveAudit walk) =>
        charts.Games.SelectMany(game => Numbers(charts, game, walk).Concat(Quarters(charts, game, walk)).Concat(Clocks(charts, game, walk)));

    private static IEnumerable<Problem> Numbers(AuditedCharts charts, AuditedGame game, DriveAudit walk)
    {
        var rows = game.Rows;
        var plays = rows.Select(row => charts.Log.Number(Play)[row] ?? 0).ToArray();
        var seen = new Dictionary<int, int>();
        var misfits = PlayNumbers.Misfits(plays).ToHashSet();
        for (var at = 0; at < rows.Count; at++)
        {
            if (!seen.TryAdd(plays[at], at))
            {
                var same = RowRepairs.SameSnap(walk.Snaps[rows[seen[plays[at]]]], walk.Snaps[rows[at]]);
                var free = Between(at > 0 ? plays[at - 1] : 0, at + 1 < rows.Count ? plays[at + 1] : int.MaxValue);
                var first = seen[plays[at]];
                _ = misfits.Remove(at);
                _ = misfits.Remove(first);
                if (!same && (free.Length == 0 || free == Text(plays[at])) && first + 1 < rows.Count && Between(first > 0 ? plays[first - 1] : 0, plays[first + 1]) is { Length: > 0 } earlier)
                {
                    yield return charts.Cell(SamePlayNumber, rows[first], Play, "another snap below has this number.", earlier);
                    continue;
                }

                yield return charts.Cell(SamePlayNumber, rows[at], Play, same ? "the same snap stands above with the same number." : "another snap above has this number.", same ? "delete the row" : free);
            }
        }

        if (rows.Count > 10 && plays[^1] > plays[^2] + 1 && walk.Follows(rows[^2], rows[^1]) && Enumerable.Range(1, rows.Count - 2).All(at => plays[at] == plays[at - 1] + 1))
        {
            yield return charts.Cell(PlayNumber, rows[^1], Play, $"follows play {plays[^2]}.", Text(plays[^2] + 1));
        }

        foreach (var at in misfits.Order())
        {
            var (before, after) = (at > 0 ? plays[at - 1] : 0, at + 1 < plays.Length ? plays[at + 1] : int.MaxValue);
            var exchanged = (at + 1 < plays.Length && plays[at + 1] == plays[at] - 1) || (at > 0 && plays[at - 1] == plays[at] + 1);
            yield return exchanged
                ? charts.Cell(RowsSwapped, rows[at], Play, $"the row stands {(at > 0 && plays[at - 1] == plays[at] + 1 ? "after" : "before")} its neighbour, against the numbers.")
                : charts.Cell(PlayNumber, rows[at], Play, $"comes after play {before}{(after < int.MaxValue ? $" and before play {after}" : "")}.", Between(before, after));
        }
    }

    private static string Between(int before, int after) => before + 2 == after || after == int.MaxValue ? Text(before + 1) : "";

    private static IEnumerable<Problem> Quarters(AuditedCharts charts, AuditedGame game, DriveAudit walk)
    {
        var rows = walk.Order(game).Where(row => charts.Log.Number(Quarter)[row] is not null).ToArray();
        var quarters = rows.Select(row => charts.Log.Number(Quarter)[row]!.Value).ToArray();
        for (var at = 0; at < rows.Length; at++)
        {
            var before = at > 0 ? quarters[at - 1] : (int?)null;
            var after = at + 1 < rows.Length ? quarters[at + 1] : (int?)null;
            var alone = quarters[at] != before && quarters[at] != after;
            if (alone && before == after && before is int around)
            {
                yield return charts.Cell(QuarterFalls, rows[at], Quarter, $"quarter {quarters[at]} between two snaps of quarter {around}.", Text(around));
            }
            else if (alone && before is int b && after is int a && b < a && (quarters[at] < b || quarters[at] > a))
            {
                // At the turn of a quarter the clock tells which side the snap belongs to.
                var clock = charts.Log.Number(Clock)[rows[at]];
                var last = charts.Log.Number(Clock)[rows[at - 1]];
                yield return charts.Cell(QuarterFalls, rows[at], Quarter, $"quarter {quarters[at]} between quarters {b} and {a}.", clock is null || last is null ? "" : Text(clock <= last ? b : a));
            }
        }

        // Longer stretches that fall: reported once where the fall begins.
        for (var at = 1; at < rows.Length; at++)
        {
            var single = at + 1 < rows.Length && quarters[at + 1] >= quarters[at - 1];
            var wasSingle = at > 1 && quarters[at - 2] <= quarters[at];
            if (quarters[at] < quarters[at - 1] && !single && !wasSingle)
            {
                yield return charts.Cell(QuarterFalls, rows[at], Quarter, $"quarter {quarters[at]} after quarter {quarters[at - 1]}.", "");
            }
        }
    }

    private static IEnumerable<Problem> Clocks(AuditedCharts charts, AuditedGame game, DriveAudit walk)
    {
        var clocks = charts.Log.Number(Clock);
        var quarters = charts.Log.Number(Quarter);
        foreach (var quarter in walk.Order(game).Where(row => clocks[row] is not null && quarters[row] is >= 1 and <= 4).GroupBy(row => quarters[row]!.Value))
        {
            var rows = quarter.ToArray();
            var misfits = PlayNumbers.Misfits([.. Strict([.. rows.Select(row => -clocks[row]!.Value)])]).ToHashSet();
            if (misfits.Count > Math.Max(2, rows.Length / 4))
            {
                continue;
            }

            foreach (var at in misfits.Select(misfit => Likelier(misfit)))
            {
                var (low, high) = Bounds(at);
                var written = charts.Raw(rows[at], Clock);
                if (at == rows.Length - 1 && quarter.Key < 4 && clocks[rows[at]] > 600 && NextQuarter(rows[at], quarter.Key + 1))
                {
                    yield return charts.Cell(QuarterFalls, rows[at], Quarter, $"quarter {quarter.Key} with {written} left after {charts.Raw(rows[at - 1], Clock)}.", Text(quarter.Key + 1));
                }
                else if (at == 0 && quarter.Key > 1 && rows.Length > 1 && clocks[rows[0]] < clocks[rows[1]] && clocks[rows[0]] < 120)
                {
                    yield return charts.Cell(QuarterFalls, rows[at], Quarter, $"quarter {quarter.Key} with {written} left before {charts.Raw(rows[1], Clock)}.", Text(quarter.Key - 1));
                }
                else
                {
                    yield return charts.Cell(ClockRises, rows[at], Clock, $"{written} left does not lie between {Time(high)} and {Time(low)}, the clock of the snaps around it.", Meant(at).Text);
                }
            }

            // Of two neighbours either of which may be wrong, the one that a slip mends best.
            int Likelier(int misfit)
            {
                var others = new[] { misfit, misfit - 1, misfit + 1 }.Where(at => at >= 0 && at < rows.Length && (at == misfit || !misfits.Contains(at)) && Rises(misfit, at));
                return others.MinBy(at => Meant(at).Off);
            }

            // Whether the clock never rises around two neighbours when the second of them is taken out.
            bool Rises(int one, int without)
            {
                var near = Enumerable.Range(Math.Min(one, without) - 2, 6).Where(at => at >= 0 && at < rows.Length && at != without && (at == one || !misfits.Contains(at))).Select(at => clocks[rows[at]]!.Value).ToArray();
                return near.Zip(near.Skip(1)).All(pair => pair.First >= pair.Second);
            }

            (string Text, int Off) Meant(int at)
            {
                var (low, high) = Bounds(at);
                var expected = Expected(at) ?? ((low + high) / 2);
                var text = ClockSlip.Meant(charts.Raw(rows[at], Clock), low, high, expected);
                return (text, text.Length == 0 ? int.MaxValue : Math.Abs((ClockSlip.Seconds(text) ?? 0) - expected));
            }

            (int Low, int High) Bounds(int at)
            {
                var before = Enumerable.Range(0, at).Reverse().FirstOrDefault(i => !misfits.Contains(i), -1);
                var after = Enumerable.Range(at + 1, rows.Length - at - 1).FirstOrDefault(i => !misfits.Contains(i), -1);
                return (after >= 0 ? clocks[rows[after]]!.Value : 0, before >= 0 ? clocks[rows[before]]!.Value : 900);
            }

            // Inside a series about as long as a huddle, or an incomplete pass, takes; between series anything.
            int? Expected(int at) =>
                at + 1 < rows.Length && walk.Follows(rows[at], rows[at + 1]) ? clocks[rows[at + 1]]!.Value + Usual(walk.Snaps[rows[at]])
                : at > 0 && walk.Follows(rows[at - 1], rows[at]) ? clocks[rows[at - 1]]!.Value - Usual(walk.Snaps[rows[at - 1]])
                : null;

            static int Usual(WalkedSnap snap) => snap.Result is "incomplete" ? 7 : snap.Call == "none" ? 0 : snap.Result == "penalty" ? 6 : 36;
        }

        bool NextQuarter(int row, int next)
        {
            var after = walk.Order(game).SkipWhile(other => other != row).Skip(1).FirstOrDefault(-1);
            return after >= 0 && quarters[after] == next;
        }
    }

    // Equal clocks are no misfits: a dead ball takes no time. Ties are broken by position so that they count as rising.
    private static IEnumerable<int> Strict(int[] falling) => falling.Select((value, at) => checked((value * 10_000) + at));

    private static string Time(int seconds) => $"{seconds / 60}:{seconds % 60:00}";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
