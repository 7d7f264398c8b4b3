using System.Globalization;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Counts;

/// <summary>How a share is written, on every page and in every sentence: whole percents, halves up, never 0% or 100% unless it is exactly so.</summary>
public static class Percent
{
    /// <summary>"71%"; "under 1%" and "over 99%" where rounding would claim none or all; a negative share has a true minus sign.</summary>
    /// <exception cref="ArgumentException">The share is not a number.</exception>
    public static string Of(double share) => Number(share) + "%";

    /// <summary>The percent of a count, rounded in whole numbers; "0%" without plays.</summary>
    public static string Of(Tally tally) => Number(tally) + "%";

    /// <summary>"71%", "&lt;1%", "&gt;99%": where a column is narrow.</summary>
    public static string Short(double share) => Shortened(Number(share)) + "%";

    /// <summary>"59–81%"; "&lt;1–12%", "70–&gt;99%" where a limit would round to none or all.</summary>
    public static string Range(Interval likely) => $"{Shortened(Number(likely.Low))}–{Shortened(Number(likely.High))}%";

    private static string Shortened(string percent) =>
        percent.Replace("under ", "<", StringComparison.Ordinal).Replace("over ", ">", StringComparison.Ordinal);

    private static string Number(double share)
    {
        const double Tiny = 1e-9; // limits that are 0 or 1 by formula come out a few ulps off
        if (double.IsNaN(share))
        {
            throw new ArgumentException("A percent needs a number.", nameof(share));
        }

        if (Math.Abs(share) < Tiny)
        {
            return "0";
        }

        if (Math.Abs(share - 1) < Tiny)
        {
            return "100";
        }

        var rounded = Math.Round(Math.Round(share * 100, 9), MidpointRounding.AwayFromZero);
        return rounded switch
        {
            0 => share > 0 ? "under 1" : "−0",
            100 when share < 1 => "over 99",
            < 0 => "−" + (-rounded).ToString("F0", CultureInfo.InvariantCulture),
            _ => rounded.ToString("F0", CultureInfo.InvariantCulture),
        };
    }

    private static string Number(Tally tally)
    {
        if (tally.Count == 0 || tally.Count == tally.Plays)
        {
            return tally.Count == 0 ? "0" : "100";
        }

        var rounded = ((200L * tally.Count) + tally.Plays) / (2L * tally.Plays);
        return rounded switch
        {
            0 => "under 1",
            100 => "over 99",
            _ => rounded.ToString(CultureInfo.InvariantCulture),
        };
    }
}
