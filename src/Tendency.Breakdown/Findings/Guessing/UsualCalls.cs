namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>
/// What any offense does: the log odds of a pass by down, distance, where the passer stands, score and clock, before a single snap of this
/// one is seen. A guess starts here and moves as its own games say.
/// </summary>
/// <remarks>
/// Common practice, rounded by hand. Anchors, professional league-wide: pass share 51 % on first down, 59 % on second, 47 % on third and
/// 1–2, 90 % on third and 3–7, 92 % beyond (one season, published 2012); third or fourth and 1: 18 % under center, 56 % from the gun
/// (2010–2015, published 2016); by score in the last quarter 83 % behind by 8–14, 60 % tied, 32 % ahead by 8–14, and nearly flat in the
/// first (six seasons, published 2014). The steps between the anchors are from memory.
/// </remarks>
internal static class UsualCalls
{
    /// <summary>Down and distance; passer; score and clock; all else.</summary>
    public const int Parts = 4;

    private static readonly double[] s_distance = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20];

    // Log odds of a pass from the gun, one row a down.
    private static readonly double[][] s_fromGun =
    [
        [-0.4, -0.3, -0.1, 0, 0.1, 0.2, 0.25, 0.3, 0.35, 0.5, 0.75, 0.95, 1.15],
        [-0.2, 0, 0.2, 0.4, 0.55, 0.7, 0.8, 0.9, 1, 1.1, 1.3, 1.5, 1.6],
        [-0.1, 0.8, 1.7, 2.1, 2.3, 2.45, 2.5, 2.55, 2.55, 2.5, 2.35, 2.1, 1.6],
        [-0.1, 0.9, 1.9, 2.3, 2.6, 2.8, 3, 3, 3, 3, 3, 3, 3],
    ];

    private static readonly double[] s_underCenter = [-1.25, -1.4, -1.65, -1.65];

    /// <summary>The parts; their sum is the log odds of a pass.</summary>
    public static double[] PassLogOdds(in Snapshot snap) => [DownAndDistance(snap), Passer(snap), ScoreAndClock(snap), TheRest(snap)];

    private static double DownAndDistance(in Snapshot snap)
    {
        if (snap.Down is not int down)
        {
            return 0.9;
        }

        var yards = Math.Clamp(snap.Distance ?? (down == 1 ? 10 : 7), 1, 20);
        var to = Array.FindIndex(s_distance, d => d >= yards);
        var values = s_fromGun[down - 1];
        return to == 0 || s_distance[to] == yards
            ? values[to]
            : values[to - 1] + ((values[to] - values[to - 1]) * (yards - s_distance[to - 1]) / (s_distance[to] - s_distance[to - 1]));
    }

    private static double Passer(in Snapshot snap)
    {
        var down = (snap.Down ?? 2) - 1;
        return snap.BackSet switch
        {
            "gun" => 0,
            "under" => s_underCenter[down],
            "pistol" => -0.6,
            "empty" => 1.3,
            _ => down >= 2 ? (snap.Distance <= 2 ? -0.8 : -0.1) : -0.5,
        };
    }

    private static double ScoreAndClock(in Snapshot snap)
    {
        var sum = snap.Quarter == 2 ? 0.1 : 0;
        if (snap is { Quarter: 2, Clock: <= 120 })
        {
            sum += 0.6;
        }

        if (snap.Margin is not int margin || snap.SecondsLeft is not double left)
        {
            return sum;
        }

        sum -= 1.6 * Math.Tanh(margin / 7.5) * (0.06 + (1.3 * Math.Exp(-left / 600)));
        return left > 240 || snap.Quarter == 5 ? sum
            : margin > 0 ? sum - 0.3
            : left <= 120 && margin >= -8 ? sum + 0.6 : sum;
    }

    private static double TheRest(in Snapshot snap)
    {
        var field = snap.YardsToGoal switch { >= 95 => -0.35, <= 2 => -0.5, <= 5 => -0.25, <= 10 => -0.1, _ => 0 };
        var people = snap.Personnel switch
        {
            "10" => 0.5,
            "11" => 0.15,
            "12" => -0.3,
            "13" => -0.8,
            "20" => 0.1,
            "21" => -0.5,
            "22" => -1.2,
            "23" => -1.8,
            "00" or "01" or "02" => 1,
            _ => 0,
        };
        var empty = snap.BackSet != "empty" && snap.Family.Contains("empty", StringComparison.OrdinalIgnoreCase) ? 1.3 : 0;
        return field + people + empty + (snap.IsNoHuddle ? 0.15 : 0);
    }
}
