using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>The most frequent values with their counts, in print words.</summary>
internal static class Frequent
{
    /// <summary>Of one column, most frequent first.</summary>
    public static IEnumerable<NamedCount> Values(PlayLog plays, string column, int most = 3) =>
        CrossTab.Values(plays, column).Take(most).Select(value => new NamedCount(Words.Title(value.Value), value.Count));

    /// <summary>Run schemes and pass concepts together.</summary>
    public static IEnumerable<NamedCount> Calls(PlayLog plays, int most = 3) =>
        Values(plays, ColumnNames.RunScheme, most).Concat(Values(plays, ColumnNames.PassConcept, most)).OrderByDescending(call => call.Count).Take(most);
}
