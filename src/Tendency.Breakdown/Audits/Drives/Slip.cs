using System.Globalization;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>How likely one value was typed for another; lower is likelier.</summary>
/// <remarks>The scale only orders repairs that explain a drive equally well; it is judgment, held by the simulation of planted mistakes.</remarks>
internal static class Slip
{
    public const double Arbitrary = 0.5;

    /// <summary>Below this only a wrong sign or two exchanged digits.</summary>
    public const double Plain = 0.12;

    public static double Number(int typed, int meant)
    {
        if (typed == -meant)
        {
            return 0.05;
        }

        var a = Math.Abs(typed).ToString(CultureInfo.InvariantCulture);
        var b = Math.Abs(meant).ToString(CultureInfo.InvariantCulture);
        return Digits(a, b) + (Math.Sign(typed) * Math.Sign(meant) < 0 ? 0.2 : 0);
    }

    /// <summary>Yard lines: the wrong half of the field, or a slip in the digits.</summary>
    public static double YardLine(int typed, int meant)
    {
        if (typed == 100 - meant)
        {
            return 0.05;
        }

        var sameHalf = typed > 50 == meant > 50;
        return Digits(Line(typed), Line(meant)) + (sameHalf ? 0 : 0.2);
    }

    /// <summary>Downs: mostly off by one.</summary>
    public static double Down(int typed, int meant) => Math.Abs(typed - meant) == 1 ? 0.15 : 0.2;

    private static double Digits(string typed, string meant)
    {
        if (typed.Length == meant.Length)
        {
            var differ = typed.Zip(meant).Count(pair => pair.First != pair.Second);
            return differ == 1 ? 0.2
                : typed.Length == 2 && typed[0] == meant[1] && typed[1] == meant[0] ? 0.1
                : Arbitrary;
        }

        var (shorter, longer) = typed.Length < meant.Length ? (typed, meant) : (meant, typed);
        return longer.Length == shorter.Length + 1 && Enumerable.Range(0, longer.Length).Any(at => longer.Remove(at, 1) == shorter) ? 0.15 : Arbitrary;
    }

    private static string Line(int toGoal) => (toGoal > 50 ? 100 - toGoal : toGoal).ToString(CultureInfo.InvariantCulture);
}
