namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>The ledger in one sentence.</summary>
internal static class LedgerSentence
{
    public static string Of(Front front, RunScheme scheme, FlankCount play, FlankCount back, IReadOnlyList<LeverageFlag> flags)
    {
        var late = play.Late > play.Now ? $", {play.Late} once the safety comes" : "";
        var first = $"{FrontWord.Of(front.Name)} against {scheme.Name}: {play.Gaps} gaps to the play, {Men(play.Now)} at the snap{late}; {PlaySide(play)}";
        var second = back switch
        {
            { SpareLate: < 0 } => $"; the backside stays {-back.SpareLate} short",
            { SpareNow: < 0 } => $"; the backside is {-back.SpareNow} short until the safety comes",
            _ => "",
        };
        var edge = flags.FirstOrDefault(f => f.Kind is LeverageKind.EdgeIsASafety or LeverageKind.NoOverlap);
        return first + second + (edge is null ? "" : $"; {edge.Text}") + ".";
    }

    private static string Men(int n) => n == 1 ? "1 man" : $"{n} men";

    private static string PlaySide(FlankCount play) => play switch
    {
        { SpareLate: < 0 } => $"{-play.SpareLate} short even so",
        { SpareNow: < 0 } => $"{-play.SpareNow} short until he does",
        { SpareNow: > 0 } => "a man to spare at once",
        { SpareLate: > 0 } => "every gap has a man and the safety comes free",
        _ => "every gap has a man, nobody is free",
    };
}
