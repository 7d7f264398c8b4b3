namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>Who has a gap.</summary>
/// <param name="Fitter">Empty when nobody has it, even late.</param>
/// <param name="IsLate">Whether he comes from depth.</param>
public sealed record GapFit(Flank Flank, string Gap, string Fitter, bool IsLate)
{
    public bool IsUncovered => Fitter.Length == 0;

    /// <summary>The man himself; null when nobody has it.</summary>
    public Defender? Man { get; init; }

    /// <summary>Where it lies along the line.</summary>
    public GapPlace Place { get; init; }
}

/// <summary>Where a gap lies on its side.</summary>
/// <param name="From">Index of the gap between linemen it begins at (0 = A).</param>
/// <param name="To">Index of the one it ends at; more than <paramref name="From"/> where a puller left.</param>
/// <param name="Part">Which part of it, 0 the innermost, where blockers stand in it.</param>
/// <param name="Parts">Parts they make of it.</param>
/// <param name="IsAdded">A second runner's, outside of all men.</param>
public readonly record struct GapPlace(int From, int To, int Part, int Parts, bool IsAdded);

/// <summary>Gives every gap of a side a man, by alignment first and by flow then; as many stay uncovered as the count is short.</summary>
internal static class GapAssignment
{
    /// <returns>One fit a gap from the inside out, and the men left over, those of the snap first.</returns>
    public static (IReadOnlyList<GapFit> Fits, IReadOnlyList<Defender> Spare) Of(Flank flank, IReadOnlyList<Gap> gaps, Lineup lineup, bool pulled)
    {
        var men = lineup.Now.Where(d => d.Flank == flank).ToList();
        var taken = new Defender?[gaps.Count];
        var spare = new List<Defender>();
        var late = new HashSet<int>();
        var baseGaps = gaps.Max(g => g.To) + 1;
        var waits = men.Count < gaps.Count && lineup.Late.Any(d => d.Flank == flank);
        var edge = WaitsFor(flank, gaps, lineup, men);
        if (edge is not null)
        {
            taken[^1] = edge;
            late.Add(gaps.Count - 1);
        }

        foreach (var man in Order(men))
        {
            var gap = man.Role switch
            {
                Role.Overhang => LastOpen(taken),
                Role.Line when Technique.SetsEdge(man.Technique) => Edge(man, gaps, taken, baseGaps),
                Role.Line => Inside(man, gaps, taken, baseGaps),
                _ => (man.Name.StartsWith("backside", StringComparison.Ordinal) == pulled) ? LastInside(gaps, taken, waits) : FirstOpen(taken),
            };
            if (gap < 0)
            {
                spare.Add(man);
            }
            else
            {
                taken[gap] = man;
            }
        }

        KeepOrder(taken);
        foreach (var man in lineup.Late.Where(d => d.Flank == flank && d != edge))
        {
            // From depth a man comes to the edge; only the free safety to the play fills inside.
            var gap = flank == Flank.Back || man.Name.StartsWith("outside", StringComparison.Ordinal) ? LastOpen(taken) : FirstOpen(taken);
            if (gap < 0)
            {
                spare.Add(man);
            }
            else
            {
                taken[gap] = man;
                late.Add(gap);
            }
        }

        var fits = gaps.Select((g, i) => new GapFit(flank, g.Label, taken[i]?.Name ?? "", late.Contains(i)) { Man = taken[i], Place = g.Place }).ToArray();
        return (fits, spare);
    }

    /// <summary>The outside safety where the side is short and nobody sets its edge: linebackers stay inside him, whatever pulls.</summary>
    private static Defender? WaitsFor(Flank flank, IReadOnlyList<Gap> gaps, Lineup lineup, List<Defender> men) =>
        men.Count < gaps.Count && !men.Exists(d => d.Role == Role.Overhang || (d.Role == Role.Line && Technique.SetsEdge(d.Technique)))
            ? lineup.Late.FirstOrDefault(d => d.Flank == flank && d.Name.StartsWith("outside", StringComparison.Ordinal))
            : null;

    /// <summary>Linemen keep their order along the line: nobody fits outside of a man who stands outside of him.</summary>
    private static void KeepOrder(Defender?[] taken)
    {
        var gaps = taken.Index().Where(gap => gap.Item is { Role: Role.Line }).Select(gap => gap.Index).ToArray();
        var men = gaps.Select(gap => taken[gap]!).OrderBy(man => Technique.Order(man.Technique)).ToArray();
        for (var i = 0; i < gaps.Length; i++)
        {
            taken[gaps[i]] = men[i];
        }
    }

    /// <summary>Overhangs, then the edge men of the line from the outside in, then inside men, then linebackers with the playside one first.</summary>
    private static IEnumerable<Defender> Order(List<Defender> men) =>
        men.Where(d => d.Role == Role.Overhang)
            .Concat(men.Where(d => d.Role == Role.Line && Technique.SetsEdge(d.Technique)).Reverse())
            .Concat(men.Where(d => d.Role == Role.Line && !Technique.SetsEdge(d.Technique)))
            .Concat(men.Where(d => d.Role is Role.Linebacker or Role.Safety));

    private static int FirstOpen(Defender?[] taken) => Array.FindIndex(taken, t => t is null);

    /// <summary>The outermost open gap; where the side waits for a safety the pitch is his, and a linebacker runs inside-out to the quarterback.</summary>
    private static int LastInside(IReadOnlyList<Gap> gaps, Defender?[] taken, bool waits)
    {
        var inside = Enumerable.Range(0, taken.Length).Where(i => taken[i] is null && !(waits && gaps[i].Label == "pitch")).ToArray();
        return inside.Length > 0 ? inside[^1] : LastOpen(taken);
    }

    private static int LastOpen(Defender?[] taken) => Array.FindLastIndex(taken, t => t is null);

    /// <summary>His own gap's outermost open part, else the next open one inside: a 5 beside an edge man is heavy and takes B.</summary>
    private static int Edge(Defender man, IReadOnlyList<Gap> gaps, Defender?[] taken, int baseGaps)
    {
        var own = Technique.Gap(man.Technique, baseGaps);
        for (var i = gaps.Count - 1; i >= 0; i--)
        {
            if (gaps[i].From <= own && taken[i] is null)
            {
                return i;
            }
        }

        return FirstOpen(taken);
    }

    /// <summary>His own gap's innermost open part, else the open gap nearest to it.</summary>
    private static int Inside(Defender man, IReadOnlyList<Gap> gaps, Defender?[] taken, int baseGaps)
    {
        var own = Technique.Gap(man.Technique, baseGaps);
        var open = Enumerable.Range(0, gaps.Count).Where(i => taken[i] is null).ToArray();
        return open.Length == 0
            ? -1
            : open.OrderBy(i => gaps[i].Holds(own) ? 0 : Math.Min(Math.Abs(gaps[i].From - own), Math.Abs(gaps[i].To - own))).ThenBy(i => i).First();
    }
}
