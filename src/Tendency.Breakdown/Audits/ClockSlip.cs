using System.Globalization;

namespace Tendency.Breakdown.Audits;

/// <summary>The clock a slip of one digit, or of two neighbours, most likely stands for.</summary>
internal static class ClockSlip
{
    /// <param name="written">The cell, m:ss.</param>
    /// <param name="low">Seconds left at the next snap.</param>
    /// <param name="high">Seconds left at the snap before.</param>
    /// <param name="expected">Seconds left as usual after the snap before.</param>
    /// <returns>The reading between both that lies nearest to the expected one; empty when no slip gives one.</returns>
    public static string Meant(string written, int low, int high, int expected)
    {
        var colon = written.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0)
        {
            return "";
        }

        return Slips(written).Select(text => (Text: text, Seconds: Seconds(text)))
            .Where(slip => slip.Seconds is int seconds && seconds >= low && seconds <= high)
            .OrderBy(slip => Math.Abs(slip.Seconds!.Value - expected))
            .Select(slip => slip.Text)
            .FirstOrDefault() ?? "";
    }

    private static IEnumerable<string> Slips(string written)
    {
        // The wrong minute.
        if (Seconds(written) is int seconds)
        {
            foreach (var minutes in new[] { -3, -2, -1, 1, 2, 3 }.Select(off => (seconds / 60) + off).Where(m => m >= 0))
            {
                yield return $"{minutes}:{seconds % 60:00}";
            }
        }

        for (var at = 0; at < written.Length; at++)
        {
            if (written[at] == ':')
            {
                continue;
            }

            for (var digit = '0'; digit <= '9'; digit++)
            {
                if (digit != written[at])
                {
                    yield return string.Concat(written.AsSpan(0, at), [digit], written.AsSpan(at + 1));
                }

                yield return written.Insert(at, digit.ToString());
            }

            if (written.Length > 4)
            {
                yield return written.Remove(at, 1);
            }

            if (at + 1 < written.Length && written[at + 1] != ':')
            {
                yield return string.Concat(written.AsSpan(0, at), [written[at + 1], written[at]], written.AsSpan(at + 2));
            }
        }
    }

    public static int? Seconds(string text)
    {
        var parts = text.Split(':');
        return parts.Length == 2 && parts[0].Length is 1 or 2 && parts[1].Length == 2
            && (parts[0].Length == 1 || parts[0][0] != '0')
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && minutes <= 15 && seconds < 60
            ? (minutes * 60) + seconds
            : null;
    }
}
