namespace Tendency.Booklet.Pages.Wording;

/// <summary>Headlines keep to two lines of 17 points: when a sentence is too long, a shorter one takes its place; type is never squeezed.</summary>
internal static class Headline
{
    /// <summary>Characters that surely fit on two lines of 516 points at 17 points bold (about 56 a line, less what wrapping wastes).</summary>
    public const int Most = 100;

    /// <summary>The first candidate that fits; the last one whatever its length.</summary>
    public static string First(params string[] candidates) =>
        candidates.FirstOrDefault(candidate => candidate.Length is > 0 and <= Most) ?? candidates[^1];

    /// <summary>As many sentences as fit, in order; the first always stands.</summary>
    public static string Of(params string[] sentences)
    {
        var headline = "";
        foreach (var sentence in sentences.Where(sentence => sentence.Length > 0))
        {
            if (headline.Length == 0)
            {
                headline = sentence;
            }
            else if (headline.Length + 1 + sentence.Length <= Most)
            {
                headline += " " + sentence;
            }
        }

        return headline;
    }
}
