using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>What the snap before did, in the same series; empty on a series' first snap and where its gain is not charted.</summary>
internal static class SnapBefore
{
    public const string Name = "snap_before";
    public const string Long = "long play";
    public const string Loss = "loss";
    public const string Incomplete = "incompletion";
    public const string Gain = "gain";

    public static CategoryColumn Column(PlayLog plays)
    {
        var games = plays.Category(ColumnNames.Game);
        var numbers = plays.Number(ColumnNames.Play);
        var series = plays.Number(ColumnNames.Series);
        var words = new string[plays.Rows];
        Array.Fill(words, "");
        int? before = null;
        foreach (var row in Enumerable.Range(0, plays.Rows).OrderBy(row => games.Codes[row]).ThenBy(row => numbers[row]))
        {
            if (before is int last && games.Codes[last] == games.Codes[row] && series[row] is int now && series[last] == now)
            {
                words[row] = Said(plays, last);
            }

            before = row;
        }

        return CategoryColumn.FromWords(Name, words);
    }

    private static string Said(PlayLog plays, int row) =>
        plays.Category(ColumnNames.Explosive)[row] == "yes" ? Long
        : plays.Category(ColumnNames.Result)[row] == "incomplete" ? Incomplete
        : plays.Number(ColumnNames.Gain)[row] switch { < 0 => Loss, null => "", _ => Gain };
}
