namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>One gap to be defended.</summary>
/// <param name="Label">What it is called on a card.</param>
/// <param name="From">Index of the base gap it begins at (0 = A); a merged gap spans several.</param>
/// <param name="To">Index of the base gap it ends at.</param>
internal sealed record Gap(string Label, int From, int To)
{
    public int Part { get; init; }

    public int Parts { get; init; } = 1;

    public bool IsAdded { get; init; }

    public GapPlace Place => new(From, To, Part, Parts, IsAdded);

    public bool Holds(int index) => From <= index && index <= To;
}

/// <summary>The gaps a run makes on both sides, from the inside out.</summary>
/// <remarks>
/// Rules R1 to R5 of the ledger: a side starts with its attached blockers and one; a puller moves a gap from the backside to the play;
/// a man from off the line adds one where he arrives; a second runner adds one. A throw off a defender adds none.
/// </remarks>
internal sealed record RunGaps(IReadOnlyList<Gap> Play, IReadOnlyList<Gap> Back)
{
    private static readonly string[] Letters = ["A", "B", "C", "D", "E", "F"];

    public IReadOnlyList<BlockerMove> Moves { get; init; } = [];

    public static RunGaps Of(RunScheme scheme, Surface surface, Tag tag)
    {
        var insert = Inserts(scheme, surface);
        var (playAdds, backAdds) = Adds(scheme, tag);
        var play = Side(surface.BaseGaps(Flank.Play), 0, false, Splits(scheme, insert && scheme.InsertToPlay), Aim(scheme), playAdds);
        var back = Side(surface.BaseGaps(Flank.Back), scheme.FromBack, scheme.Puller == "tackle", insert && !scheme.InsertToPlay ? [scheme.InsertWord] : [], int.MaxValue, backAdds);
        return new RunGaps(play, back) { Moves = BlockerMove.Of(scheme, insert, play, back) };
    }

    private static bool Inserts(RunScheme scheme, Surface surface) => scheme.Insert switch
    {
        InsertKind.Always => true,
        InsertKind.IfOffBall => surface.OffBall > 0,
        InsertKind.BackLeads => !surface.IsEmpty,
        _ => false,
    };

    private static int Aim(RunScheme scheme) => scheme.Aim switch { "A" => 0, "B" => 1, "C" => 2, _ => int.MaxValue };

    /// <summary>The men who split the gap at the point of attack, the wrapper inside and the kick-out outside.</summary>
    private static List<string> Splits(RunScheme scheme, bool insert)
    {
        var words = new List<string>();
        if (scheme.FromBack == 2)
        {
            words.AddRange(["wrap", "kick-out"]);
        }
        else if (scheme.FromBack == 1)
        {
            words.Add(scheme.InsertWord == "wrap" ? "kick-out" : "puller");
        }

        if (insert)
        {
            words.Add(scheme.InsertWord);
        }

        return [.. words.OrderBy(w => w == "kick-out" ? 1 : 0)];
    }

    private static (IReadOnlyList<string> Play, IReadOnlyList<string> Back) Adds(RunScheme scheme, Tag tag)
    {
        var play = scheme.AddWords.Take(scheme.AddsPlay).ToList();
        var back = scheme.AddWords.Take(scheme.AddsBack).ToList();
        if (tag == Tag.Read && !scheme.IsOption)
        {
            (scheme.Name == "power" ? play : back).Add("keep");
        }

        if (tag == Tag.Bash && scheme.Name != "bash")
        {
            back.Add("back's path");
        }

        return (play, back);
    }

    private static List<Gap> Side(int baseGaps, int leaving, bool tackleLeaves, List<string> splits, int aim, IReadOnlyList<string> adds)
    {
        var gaps = new List<Gap>();
        var mergedFrom = leaving == 1 && tackleLeaves ? 1 : 0;
        for (var i = 0; i < baseGaps; i++)
        {
            var to = i == mergedFrom ? Math.Min(i + leaving, baseGaps - 1) : i;
            gaps.Add(new Gap(string.Join('/', Letters[i..(to + 1)]), i, to));
            i = to;
        }

        if (splits.Count > 0)
        {
            var at = gaps.FindIndex(g => g.Holds(Math.Min(aim, baseGaps - 1)));
            var hole = gaps[at];
            gaps.RemoveAt(at);
            gaps.InsertRange(at, Split(hole, splits));
        }

        gaps.AddRange(adds.Select(a => new Gap(a, baseGaps, baseGaps) { IsAdded = true }));
        return gaps;
    }

    private static IEnumerable<Gap> Split(Gap hole, List<string> men)
    {
        var parts = men.Count + 1;
        yield return hole with { Label = $"{hole.Label} inside the {men[0]}", Parts = parts };
        for (var i = 1; i < men.Count; i++)
        {
            yield return hole with { Label = $"{hole.Label} between the {men[i - 1]} and the {men[i]}", Part = i, Parts = parts };
        }

        yield return hole with { Label = $"{hole.Label} outside the {men[^1]}", Part = men.Count, Parts = parts };
    }
}
