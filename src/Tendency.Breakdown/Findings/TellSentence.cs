using Tendency.Breakdown.Counts;

namespace Tendency.Breakdown.Findings;

/// <summary>One tell as a coach would say it.</summary>
public static class TellSentence
{
    /// <summary>
    /// "Wing left, back strong: run 83% (35 of 42; likely 70–91%), usual 52%; same way in 4 of 4 games; held out 29 of 36". Under five
    /// plays there is no percentage.
    /// </summary>
    public static string Of(Tell tell, string outcomeColumn)
    {
        var often = tell.Plays < Estimate.FewestPlays
            ? $"{tell.Count} of {tell.Plays}, too few for a percentage"
            : $"{Percent.Of(tell.Share)} ({tell.Count} of {tell.Plays}; likely {Percent.Range(tell.Range)})";
        var held = tell.HeldOutPlays == 0
            ? "not found without any one game"
            : $"held out {tell.HeldOutCount} of {tell.HeldOutPlays}{(tell.WasTried ? "" : ", too few to try it on")}";
        return $"{SituationWords.Of(tell.Conditions)}: {SituationWords.Outcome(outcomeColumn, tell.Outcome)} {often}, usual {Percent.Of(tell.BaseShare)}; "
            + $"same way in {tell.GamesSameWay} of {tell.Games} games; {held}";
    }

    /// <summary>"else, gun: pass 82% (155 of 190)"; empty where a tell has no other half.</summary>
    public static string Otherwise(Tell tell, string outcomeColumn)
    {
        if (tell.Otherwise is not { } other)
        {
            return "";
        }

        var often = other.Plays < Estimate.FewestPlays ? $"{other.Count} of {other.Plays}" : $"{Percent.Of(other.Share)} ({other.Count} of {other.Plays})";
        return $"else, {SituationWords.Of(other.Condition.Name, other.Condition.Value)}: {SituationWords.Outcome(outcomeColumn, other.Outcome)} {often}";
    }

    /// <summary>"expect 71%; holds within down and distance; 3% of shuffled charts show one as strong": what the raw count leaves out.</summary>
    public static string Caution(Tell tell)
    {
        var within = tell.HoldsWithinDownAndDistance switch
        {
            true => "holds within down and distance",
            false => "may be down and distance",
            null => "is down and distance",
        };
        var shuffled = tell.ShuffledP is double p ? $"; {Percent.Of(p)} of shuffled charts show one as strong" : "";
        return $"expect {Percent.Of(tell.ShrunkShare)}; {within}{shuffled}";
    }
}
