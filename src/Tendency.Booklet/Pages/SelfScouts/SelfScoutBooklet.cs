using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.SelfScouts;

/// <summary>The few pages on what we give away ourselves.</summary>
public static class SelfScoutBooklet
{
    /// <param name="study">Our own plays; with <see cref="Study.Guess"/> set there is a page on where we are readable.</param>
    /// <param name="film">What our fronts gave up; empty for an offense.</param>
    /// <param name="dated">Written into the file; the same study and date give the same bytes.</param>
    public static ScoutingBooklet Compose(Study study, SelfScoutReport report, IReadOnlyList<FilmRow> film, DateTimeOffset dated)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(report);
        study = study with { Ranges = new LikelyRanges(ScoutColumns.AddTo(study.Plays), study.Level) };
        Page?[] pages = [ChangePage.Compose(study, report), OwnTellsPage.Compose(study, report), OwnReadabilityPage.Compose(study), OwnFrontsPage.Compose(study, film)];
        return new ScoutingBooklet(
            study.Opponent,
            study.Side,
            $"{study.Opponent} {study.Side}, self-scout",
            Footprint.Of(study),
            [.. pages.OfType<Page>().Select(page => new Section(page.Name, [page]))],
            dated)
        {
            LikelyMeans = Footprint.LikelyMeans(study),
            Kind = "Self-scout",
            Contents = false,
        };
    }
}
