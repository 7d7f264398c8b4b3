using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Outcomes;

/// <summary>What a dropback comes to, by kind of drop: sacked, out of the pocket, intercepted, incomplete or caught for some yards.</summary>
public static class PassOutcome
{
    /// <summary>Sack, scramble, interception and completion rates; yards of a catch as a shifted lognormal.</summary>
    private readonly record struct Rates(double Sack, double Scramble, double Interception, double Complete, double Middle, double Spread, int Shift);

    public static Outcome Of(Situation at, Call call, DefenseLook faced, Chance chance)
    {
        var rates = RatesOf(call.Drop);
        var heat = faced.Rushers >= 5 ? 1.6 : faced.Rushers <= 3 ? 0.75 : 1;
        var man = faced.Coverage is "cover 1" or "cover 0" or "two man" ? -0.05 : 0;
        var field = at.ToGoal <= 10 ? -0.08 : 0;
        if (call.Kind == "pass" && !at.IsTry && chance.Roll(rates.Sack * heat))
        {
            return new Outcome(RunOutcome.Clip(at, -chance.Between(1, 10)), "sack");
        }

        if (call.Kind == "pass" && chance.Roll(rates.Scramble))
        {
            return Carried(at, chance.Between(-1, 14), "scramble", "");
        }

        if (!at.IsTry && chance.Roll(rates.Interception))
        {
            return new Outcome(0, "interception", Target: Target(call, chance));
        }

        if (!chance.Roll(rates.Complete + man + field))
        {
            return new Outcome(0, "incomplete", Target: Target(call, chance));
        }

        var caught = (rates.Middle * Math.Exp(rates.Spread * chance.Normal())) - rates.Shift;
        return Carried(at, (int)Math.Round(caught, MidpointRounding.AwayFromZero), "complete", Target(call, chance));
    }

    private static Outcome Carried(Situation at, int gain, string result, string target)
    {
        var clipped = RunOutcome.Clip(at, gain);
        return new Outcome(clipped, result, Touchdown: clipped == at.ToGoal, Target: target);
    }

    private static Rates RatesOf(string drop) => drop switch
    {
        "quick" => new(0.025, 0.01, 0.015, 0.68, 7.5, 0.58, 0),
        "deep" => new(0.12, 0.05, 0.035, 0.45, 23, 0.42, 0),
        "play action" => new(0.085, 0.03, 0.022, 0.56, 15.5, 0.58, 0),
        "boot" => new(0.06, 0.06, 0.020, 0.62, 11.5, 0.55, 0),
        "sprint out" => new(0.05, 0.05, 0.020, 0.58, 9, 0.5, 0),
        "screen" => new(0.02, 0.00, 0.008, 0.80, 10.5, 0.58, 4),
        _ => new(0.09, 0.05, 0.024, 0.56, 13, 0.55, 0),
    };

    private static string Target(Call call, Chance chance) => call.Drop switch
    {
        "screen" => chance.Pick(("deep back", 0.6), ("slot receiver", 0.25), ("z receiver", 0.15)),
        "boot" => chance.Pick(("y tight end", 0.55), ("z receiver", 0.25), ("x receiver", 0.2)),
        "deep" => chance.Pick(("x receiver", 0.4), ("z receiver", 0.35), ("slot receiver", 0.25)),
        _ => chance.Pick(("x receiver", 0.24), ("z receiver", 0.24), ("slot receiver", 0.26), ("y tight end", 0.16), ("deep back", 0.1)),
    };
}
