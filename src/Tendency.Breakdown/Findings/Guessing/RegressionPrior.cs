namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>What the regression expects before it has seen a game.</summary>
internal sealed record RegressionPrior(double[] Expected, double[] Precision)
{
    // Professional offenses differ from the usual by about 0.3 log odds, overall and in each part (counted with the usual calls); overall
    // they may differ by more, as levels of play do, and what a chart calls a pass.
    private const double PartPrecision = 9;
    private const double ConstantPrecision = 1.5;

    /// <param name="hit">The outcome, in the plays learned from.</param>
    /// <param name="precision">How hard everything beyond the usual calls is held at zero.</param>
    public static RegressionPrior For(GuessGround ground, int outcome, bool[] hit, double precision)
    {
        var width = ground.Seen.Width;
        var expected = new double[width];
        var precisions = ground.Seen.Restraint.Select(r => r * precision).ToArray();
        var sign = !ground.IsCall ? 0 : ground.Outcomes[outcome] switch { "pass" => 1, "run" => -1, _ => 0 };
        for (var part = 0; sign != 0 && part < UsualCalls.Parts; part++)
        {
            (expected[part], precisions[part]) = (sign, PartPrecision);
        }

        var rate = (hit.Count(h => h) + 0.5) / (hit.Length + 1);
        expected[Features.Constant] = sign == 0 ? Math.Log(rate / (1 - rate)) : 0;
        precisions[Features.Constant] = ConstantPrecision;
        return new RegressionPrior(expected, precisions);
    }
}
