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
            : $"held out {tell.HeldOutCount} of {tell.HeldOutPlays}{(!tell.WasTried ? ", too few to try it on" : tell.HeldUp ? "" : ", it did not hold")}";
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

    /// <summary>"3rd down alone 66% (48 of 72)": what there is to see without the last condition; empty for a single one.</summary>
    public static string Parent(Tell tell) => tell.Parent is not { } parent || parent.Plays < Estimate.FewestPlays ? ""
        : $"{string.Join(", ", parent.Conditions.Select(c => SituationWords.Of(c.Name, c.Value)))} alone {Percent.Of(parent.Share)} ({parent.Count} of {parent.Plays})";

    /// <summary>"plays Calder Bay 11, 25; Ashmere Falls 17; 12 more": the first of them, for the cut-ups.</summary>
    public static string Plays(Tell tell, int most)
    {
        var games = tell.PlaysList.Take(most).Select(play => (Game: play[..play.LastIndexOf(':')], Play: play[(play.LastIndexOf(':') + 1)..]))
            .GroupBy(play => play.Game).Select(game => $"{game.Key} {string.Join(", ", game.Select(play => play.Play))}");
        return $"plays {string.Join("; ", games)}{(tell.PlaysList.Count > most ? $"; {tell.PlaysList.Count - most} more" : "")}";
    }

    /// <summary>"expect 71%; holds within down and distance; 3% of shuffled charts show one as strong": what the raw count leaves out.</summary>
    public static string Caution(Tell tell)
    {
        var within = tell.HoldsWithinDownAndDistance switch
        {
            true => "holds within down and distance",
            false => "may only be the down and distance",
            null => "is the down and distance itself",
        };
        var shuffled = tell.ShuffledP is double p ? $"; {Percent.Of(p)} of shuffled charts show one as strong" : "";
        return $"expect {Percent.Of(tell.ShrunkShare)}; {within}{shuffled}";
    }
}
