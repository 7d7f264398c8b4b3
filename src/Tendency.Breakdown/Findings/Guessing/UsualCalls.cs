namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>
/// What any offense does: the log odds of a pass by down, distance, where the passer stands, score and clock, before a single snap of this
/// one is seen. A guess starts here and moves as its own games say.
/// </summary>
/// <remarks>
/// Down and distance, gun and under center, score, clock, field and tempo: counted in public play-by-play of one professional season's
/// first six weeks, 2022, about 11,600 snaps, and rounded by hand to about a tenth. Pass share there: 51 % on first down, 63 % on second,
/// 45 % on third and 1–2, 89 % on third and 3–7, 94 % beyond; in the last quarter 82 % behind by 9–16, 60 % tied, 36 % ahead by 9 or more.
/// Older counts say much the same: 51, 59, 47, 90 and 92 % (one season, published 2012); 83, 60 and 32 % (six seasons, published 2014). On
/// third or fourth and 1 they differ, 20 % under center and 50 % from the gun against 18 and 56 % (2010–2015, published 2016): the step
/// stands between them. Fitted on some games and tried on the rest, such steps come to a log loss of 0.514, those from memory to 0.522.
/// Pistol, empty and personnel, which are not in it: from memory.
/// </remarks>
internal static class UsualCalls
{
    /// <summary>Down and distance; passer; score and clock; all else.</summary>
    public const int Parts = 4;

    private static readonly double[] s_distance = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20];

    // Log odds of a pass from the gun, one row a down.
    private static readonly double[][] s_fromGun =
    [
        [-0.5, -0.5, -0.4, -0.4, -0.3, -0.1, 0.1, 0.2, 0.3, 0.4, 0.9, 1.3, 1.4],
        [-0.4, -0.1, 0.1, 0.3, 0.5, 0.8, 1.1, 1.2, 1.3, 1.2, 1.9, 2, 1.8],
        [-0.1, 0.7, 1.4, 2.2, 2.6, 2.8, 2.9, 3.1, 3.2, 3.3, 3.3, 2.9, 2],
        [0.2, 1.3, 2.2, 2.6, 2.8, 3, 3, 3, 3, 3, 3, 3, 3],
    ];

    private static readonly double[] s_underCenter = [-1, -1.25, -1.4, -1.4];

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
            _ => down < 2 ? -0.4 : snap.Distance == 1 ? -0.7 : 0,
        };
    }

    private static double ScoreAndClock(in Snapshot snap)
    {
        // Under center the clock hurries nobody.
        var canHurry = snap.BackSet != "under";
        var sum = !canHurry || snap.Quarter != 2 ? 0 : snap.Clock <= 60 ? 1.4 : snap.Clock <= 120 ? 0.7 : 0;
        if (snap.Margin is not int margin || snap.SecondsLeft is not double left)
        {
            return sum;
        }

        sum -= Math.Tanh(margin / 9.0) * (0.05 + (2.4 * Math.Exp(-left / 450)));
        return left > 240 || snap.Quarter == 5 ? sum
            : margin > 0 ? sum - 0.8
            : canHurry && left <= 120 && margin >= -8 ? sum + 0.4 : sum;
    }

    private static double TheRest(in Snapshot snap)
    {
        var field = snap.YardsToGoal switch { >= 90 => -0.5, <= 5 => 0.1, <= 10 => -0.1, <= 40 => -0.25, _ => 0 };
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
        return field + people + empty + (snap.IsNoHuddle ? 0.25 : 0);
    }
}
