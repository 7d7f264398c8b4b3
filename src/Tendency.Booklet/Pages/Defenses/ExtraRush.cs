using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>Whether five or more rushed: the question a defense's plays are first divided by.</summary>
internal static class ExtraRush
{
    public const string Name = "five_or_more_rush";
    public const int Fewest = 5;

    /// <summary>The same plays with a yes or no for five or more rushers, blank where they were not counted.</summary>
    public static PlayLog With(PlayLog plays)
    {
        var rushers = plays.Number(ColumnNames.Rushers);
        return plays.With(CategoryColumn.FromWords(Name, Enumerable.Range(0, plays.Rows).Select(row => rushers[row] switch { null => "", >= Fewest => "yes", _ => "no" })));
    }

    /// <summary>All counted plays with the answer.</summary>
    public static PlayLog Plays(Study study) => With(study.Plays);

    /// <summary>How often five or more rush, all plays together: the line the tables are read against.</summary>
    public static double? Usual(Study study) => CrossTab.Share(Plays(study), Name, "yes").Share;

    public static Share Of(Study study, PlayLog plays) => study.Of(plays, Name, "yes", Usual(study));
}
