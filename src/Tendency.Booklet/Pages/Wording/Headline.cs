using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>Headlines keep to two lines, measured: when a sentence is too long, a shorter one takes its place.</summary>
internal static class Headline
{
    /// <summary>The first candidate that fits; the last one whatever its length.</summary>
    public static string First(params string[] candidates) =>
        candidates.FirstOrDefault(candidate => candidate.Length > 0 && HeadlineType.Fits(candidate)) ?? candidates[^1];

    /// <summary>As many sentences as fit, in order, none twice; the first always stands.</summary>
    public static string Of(params string[] sentences)
    {
        var headline = "";
        foreach (var sentence in sentences.Where(sentence => sentence.Length > 0))
        {
            if (headline.Length == 0)
            {
                headline = sentence;
            }
            else if (!headline.Contains(sentence, StringComparison.Ordinal) && HeadlineType.Fits($"{headline} {sentence}"))
            {
                headline += " " + sentence;
            }
        }

        return headline;
    }
}
