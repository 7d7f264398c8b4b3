using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>Five or more rushers: the question a defense's plays are first divided by.</summary>
internal static class ExtraRush
{
    /// <summary>All counted plays with the answer.</summary>
    public static PlayLog Plays(Study study) => study.Ranges.Plays;

    /// <summary>How often five or more rush, all plays together: the line the tables are read against.</summary>
    public static double? Usual(Study study) => CrossTab.Share(Plays(study), OwnColumns.ExtraRush, "yes").Share;

    public static Share Of(Study study, PlayLog plays) => study.Of(plays, OwnColumns.ExtraRush, "yes", Usual(study));
}
