using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Outcomes;

/// <summary>One snap from the situation to what came of it: clock plays first, then look, flag, call, answer and result.</summary>
public static class SnapBall
{
    private static readonly DefenseLook Soft = new("over", "cover 3", 1, 4, 7, "none");

    public static Snap Take(Team offense, Team defense, Situation at, Chance chance)
    {
        if (Kneels(at))
        {
            return new Snap(offense.Name, defense.Name, at, Special("22", "victory set", "under", "middle"), Call.None, Soft, new Outcome(-1, "rush", Note: "kneel"));
        }

        var look = offense.Offense.LineUp(at, chance);
        var faced = defense.Defense.Answer(at, look, chance);
        if (Spikes(at, chance))
        {
            return new Snap(offense.Name, defense.Name, at, look, Call.None, faced, new Outcome(0, "incomplete", Note: "spike"));
        }

        if (!at.IsTry && Flags.DeadBall(at, chance) is { } flag)
        {
            return new Snap(offense.Name, defense.Name, at, look, Call.None, faced, new Outcome(null, "penalty", Flag: flag, Note: flag.Name));
        }

        var call = offense.Offense.CallPlay(at, look, chance);
        var outcome = call.RunBall
            ? RunOutcome.Of(at, look, call, faced, chance)
            : PassOutcome.Of(at, call, faced, chance);
        outcome = at.IsTry ? outcome : Flags.LiveBall(at, call, outcome, chance);
        return new Snap(offense.Name, defense.Name, at, look, call, faced, outcome);
    }

    /// <summary>A lead that the clock can carry home, or a half not worth a last chance from deep.</summary>
    private static bool Kneels(Situation at) =>
        at is { Down: >= 1 and <= 3, ToGoal: < 97 }
        && ((at is { Quarter: 4, Margin: > 0 } && at.Clock <= 40 * (4 - at.Down))
            || (at is { Quarter: 2, ToGoal: > 60, Clock: <= 24 }));

    private static bool Spikes(Situation at, Chance chance) =>
        at is { TwoMinute: true, FirstOfSeries: false, Down: 1 or 2, Clock: < 60 and > 8 } && chance.Roll(0.12);

    private static Look Special(string personnel, string formation, string backSet, string backSide) =>
        new(personnel, formation, 'R', backSet, backSide, "both", "none", "none", "huddle");
}
