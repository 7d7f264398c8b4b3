using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>Which two-point plays have they shown? A list, never a share.</summary>
internal static class TriesPage
{
    private const int MostSnaps = 24;
    private const int OwnPage = 12;

    /// <summary>A page of their own for a dozen tries or where there is no red-zone page; else they close that page.</summary>
    public static Page? Compose(Study study)
    {
        var tries = Tries(study);
        return tries.Rows == 0 || !StandAlone(study, tries.Rows) ? null : new Page("tries", "Two-point tries", $"They have gone for two {Times(tries.Rows)}.") { Blocks = [.. List(study)] };
    }

    internal static string WhyEmpty(Study study) => Tries(study).Rows == 0 ? "none" : "few, they close the red-zone page";

    internal static bool StandAlone(Study study, int tries) => tries >= OwnPage || !study.Plays.IsCharted(ColumnNames.FieldZone);

    private static string Times(int tries) => tries switch { 1 => "once", 2 => "twice", _ => $"{Words.Number(tries)} times" };

    /// <summary>Their two-point tries: kept out of every count, so they are taken from all snaps.</summary>
    internal static PlayLog Tries(Study study)
    {
        var tries = study.All.Where(ColumnNames.Down, "try");
        var offense = tries.Category(ColumnNames.Offense);
        return tries.Where(row => study.Chosen.Subject.Length == 0 || offense[row].Length == 0 || string.Equals(offense[row], study.Chosen.Subject, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The list under its heading; nothing when there was no try.</summary>
    internal static IEnumerable<Block> List(Study study)
    {
        var tries = Tries(study);
        if (tries.Rows > 0)
        {
            yield return new Heading("Two-point tries", $"{Words.Counted(tries.Rows, "try", "tries")}, every one; in no other count of this booklet");
            yield return SnapTable.Of(study, tries, MostSnaps);
        }
    }
}
