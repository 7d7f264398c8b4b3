using Tendency.Breakdown.Charts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>Everything charted that is known before the snap, as numbers.</summary>
/// <param name="Rows">Features of each play; the first <see cref="UsualCalls.Parts"/> are the usual calls, the next is the constant 1.</param>
/// <param name="Compact">Fewer, ordered features for trees.</param>
/// <param name="Restraint">How much harder than a look each feature is held at zero.</param>
internal sealed record Features(double[][] Rows, double[][] Compact, double[] Restraint)
{
    // What the usual calls already know of a situation leaves little to add; a look can mean anything.
    private const double SituationRestraint = 4;

    /// <summary>Index of the constant.</summary>
    public const int Constant = UsualCalls.Parts;

    private static readonly string[] s_situations =
    [
        Down, DownDistance, BackSet, Hash, FieldZone, ScoreState, ClockState, FirstOfSeries, PreviousCall, Opener, Quarter,
    ];

    private static readonly string[] s_looks = [Personnel, Formation, FormationFamily, BackSide, Strength, Attached, Wing, Motion, Tempo];

    public int Width => Rows.Length == 0 ? 0 : Rows[0].Length;

    /// <param name="outcomeColumn">Never its own feature, nor a column nested with it.</param>
    public static Features Of(PlayLog plays, string outcomeColumn)
    {
        var snaps = Snapshot.Of(plays);
        var words = ((string[])[.. s_situations, .. s_looks]).Where(name => plays.IsCharted(name) && !TellDimensions.AreNested(name, outcomeColumn)).Select(plays.Dimension).ToArray();
        var levels = words.Select(Used).ToArray();
        var rows = new double[snaps.Length][];
        var compact = new double[snaps.Length][];
        for (var row = 0; row < snaps.Length; row++)
        {
            var usual = UsualCalls.PassLogOdds(snaps[row]);
            var numbers = Numbers(snaps[row]);
            var list = new List<double>([.. usual, 1, .. numbers]);
            for (var w = 0; w < words.Length; w++)
            {
                var code = words[w].Codes[row];
                list.AddRange(levels[w].Select(level => level == code ? 1.0 : 0.0));
            }

            rows[row] = [.. list];
            compact[row] =
            [
                usual.Sum(), .. usual, snaps[row].Down ?? 0, snaps[row].Distance ?? 0, snaps[row].YardsToGoal ?? 50, snaps[row].SecondsLeft ?? 1800,
                snaps[row].Margin ?? 0, .. words.Select(word => (double)word.Codes[row]),
            ];
        }

        var situations = words.Select(word => s_situations.Contains(word.Name) ? SituationRestraint : 1).ToArray();
        var fixedWidth = rows.Length == 0 ? 0 : rows[0].Length - levels.Sum(l => l.Length);
        double[] restraint =
        [
            .. Enumerable.Repeat(SituationRestraint, fixedWidth), .. levels.SelectMany((level, w) => Enumerable.Repeat(situations[w], level.Length)),
        ];
        return new Features(rows, compact, restraint);
    }

    // A value seen on fewer than 5 plays teaches nothing, and the last of a full set says nothing new; the penalty can live with it.
    private static int[] Used(CategoryColumn column)
    {
        var counts = new int[column.Levels.Count];
        foreach (var code in column.Codes)
        {
            counts[code]++;
        }

        return [.. Enumerable.Range(1, counts.Length - 1).Where(code => counts[code] >= 5)];
    }

    /// <summary>Smooth terms and the interactions a caller thinks in, each roughly between -1 and 1.</summary>
    private static double[] Numbers(Snapshot snap)
    {
        var distance = Math.Log((snap.Distance ?? 8) / 7.0);
        var under = snap.BackSet == "under" ? 1.0 : 0;
        var late = snap.SecondsLeft is double left ? Math.Exp(-left / 900) : 0;
        var margin = Math.Tanh((snap.Margin ?? 0) / 10.0);
        var toGoal = snap.YardsToGoal is int yards ? (yards - 50) / 50.0 : 0;
        double Down(int down) => snap.Down == down ? 1 : 0;
        return
        [
            distance * Down(1), distance * Down(2), distance * Down(3), distance, under * Down(1), under * Down(2), under * distance, margin, margin * late, late,
            toGoal, toGoal * toGoal, snap is { Quarter: 2 or 4, Clock: <= 120 } ? 1 : 0,
        ];
    }
}
