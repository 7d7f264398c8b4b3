namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>A blocker who leaves his place.</summary>
/// <param name="Who">guard, tackle or center; else what the insert is called.</param>
/// <param name="From">The side he starts on.</param>
/// <param name="Job">What he does where he arrives: "kicks out", "wraps", "leads".</param>
/// <param name="To">The side he arrives on.</param>
/// <param name="Gap">Index, among that side's gaps from the inside out, of the gap whose outer bound he makes.</param>
/// <param name="Insert">Where he starts when he is no lineman; null for a puller.</param>
public sealed record BlockerMove(string Who, Flank From, string Job, Flank To, int Gap, InsertStart? Insert)
{
    public bool KicksOut => Job is Pull.KicksOut or "slices" or "traps";

    internal static IReadOnlyList<BlockerMove> Of(RunScheme scheme, bool inserts, IReadOnlyList<Gap> play, IReadOnlyList<Gap> back)
    {
        var moves = new List<BlockerMove>();
        var hole = play.Index().Where(gap => gap.Item.Parts > 1).Select(gap => gap.Index).ToArray();
        var last = hole.Length > 0 ? hole[^1] : Aimed(scheme, play);
        foreach (var pull in scheme.Pulls)
        {
            // A man from the play's side splits nothing: he stands at the hole's outer edge, beyond those who do.
            var gap = pull.IsNear || hole.Length == 0 ? last : hole[0] + Inside(scheme, inserts, pull);
            moves.Add(new BlockerMove(pull.Man, pull.IsNear ? Flank.Play : Flank.Back, pull.Job, Flank.Play, gap, null));
        }

        if (inserts)
        {
            var gap = scheme.InsertToPlay ? hole[0] + InsertAt(scheme) : back.Index().First(g => g.Item.Parts > 1).Index;
            var from = scheme.InsertFrom == InsertStart.FarWing ? Flank.Back : Flank.Play;
            moves.Add(new BlockerMove(Named(scheme), from, JobOf(scheme.InsertWord), scheme.InsertToPlay ? Flank.Play : Flank.Back, gap, scheme.InsertFrom));
        }

        return moves;
    }

    private static int Aimed(RunScheme scheme, IReadOnlyList<Gap> play)
    {
        var between = play.Index().Where(gap => !gap.Item.IsAdded).ToArray();
        var aim = scheme.Aim switch { "A" => 0, "B" => 1, "C" => 2, _ => int.MaxValue };
        return between.FirstOrDefault(gap => gap.Item.Holds(aim), between[^1]).Index;
    }

    /// <summary>How many men stand inside of a puller from the backside: in the order of the hole's parts, wrappers before the kick-out.</summary>
    private static int Inside(RunScheme scheme, bool inserts, Pull pull)
    {
        var kicks = scheme.FromBack == 2 ? pull.Job == Pull.KicksOut : scheme.InsertWord == "wrap";
        return !kicks ? 0 : scheme.FromBack - 1 + (inserts && scheme.InsertToPlay ? 1 : 0);
    }

    /// <summary>How many stand inside of the insert: pullers who are not the kick-out.</summary>
    private static int InsertAt(RunScheme scheme) => scheme.FromBack == 2 ? 1 : scheme.InsertWord == "wrap" ? 0 : scheme.FromBack;

    private static string Named(RunScheme scheme) => scheme.InsertFrom switch
    {
        InsertStart.Back => "back",
        InsertStart.Backfield => "fullback",
        _ => "wing",
    };

    private static string JobOf(string word) => word switch
    {
        "kick-out" => Pull.KicksOut,
        "wrap" => "wraps",
        "slice" => "slices",
        "arc man" => "arcs",
        "wham block" => "traps",
        "insert" => "inserts",
        _ => "leads",
    };
}
