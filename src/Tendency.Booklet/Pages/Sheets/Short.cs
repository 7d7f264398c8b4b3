namespace Tendency.Booklet.Pages.Sheets;

/// <summary>Keeps a row of the sheet two lines high: a staff's long word is cut at a word's end, marked with three dots.</summary>
internal static class Short
{
    /// <summary>About what 70 points hold at 8.5 points.</summary>
    public const int Front = 14;

    /// <param name="word">A name.</param>
    /// <param name="most">Characters.</param>
    public static string Cut(string word, int most = Front)
    {
        if (word.Length <= most)
        {
            return word;
        }

        var end = word.LastIndexOf(' ', most - 1);
        return word[..(end > 0 ? end : most - 1)] + "…";
    }
}
