using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Cards;
using Tendency.Booklet.Pages.Defenses;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>The one list of pages, in reading order. To add a page: its file in this folder, its line here.</summary>
public static class BookletOrder
{
    // Stands only where some games count more.
    private static readonly PageEntry s_weights = new("Brief", Weighing.Anchor, "Which games count more", [], WeightsPage.Compose) { SumsUp = true, IsWanted = study => study.Weights.IsOn && study.Games.Count > 0 };

    // They close the booklet of an offense and of a defense alike.
    private static readonly PageEntry[] s_ofTheCharts =
    [
        new("How sure", "audit", "Chart audit", [], AuditPage.Compose) { WhenEmpty = "nothing to mend" },
        new("How sure", "reading", "How to read", [], ReadingPage.Compose) { SumsUp = true },
    ];

    public static IReadOnlyList<PageEntry> Pages { get; } =
    [
        new("Brief", "brief", "Scouting brief", [], BriefPage.Compose) { SumsUp = true },
        s_weights,
        new("Brief", "since", "What changed since the last print", [], SincePage.Compose) { IsWanted = study => study.Changes is not null },
        new("Situations", "down-distance", "Down and distance", [], DownDistancePage.Compose),
        new("Situations", "first-of-series", "First of series", [ColumnNames.Series], SeriesPage.Compose),
        new("Situations", "openers", "Openers", [], OpenersPage.Compose) { WhenEmpty = "no snap beyond the openers" },
        new("Situations", "after", "After a long play or a loss", [ColumnNames.Series, ColumnNames.Gain], AfterPage.Compose),
        new("Situations", "clock", "Clock and score", [ColumnNames.Quarter, ColumnNames.Clock], ClockPage.Compose) { WhenEmpty = "no two-minute or four-minute snap" },
        new("Front", "front-check", "Front check", [], FrontCheckPage.Compose) { WhenEmpty = "no run with a rated scheme" },
        new("Front", "front-cards", "Front cards, first choice", [ColumnNames.RunScheme], study => FrontCardsPage.Compose(study, FrontCardsPage.First)) { WhenEmpty = "no run scheme on five plays" },
        new("Front", "front-cards-next", "Front cards, second choice", [ColumnNames.RunScheme], study => FrontCardsPage.Compose(study, FrontCardsPage.Second)) { WhenEmpty = "no second front, or no run scheme on five plays" },
        new("Front", "front-situation", "Front by situation", [], FrontSituationPage.Compose) { WhenEmpty = "no front check" },
        new("Front", "extra-fitter", "Extra fitter", [ColumnNames.RunScheme, ColumnNames.Read], ExtraFitterPage.Compose) { WhenEmpty = "no run with a rated scheme" },
        new("Front", "protection", "Protection and rusher", [ColumnNames.SlideSide, ColumnNames.BackSide], ProtectionPage.Compose) { WhenEmpty = "no slide with an offset back" },
        new("Looks", "formation", "Formation and back", [ColumnNames.Formation], FormationPage.Compose) { WhenEmpty = "no formation on five plays" },
        new("Looks", "personnel", "Personnel", [ColumnNames.Personnel], PersonnelPage.Compose),
        new("Looks", "back-side", "Back's side", [ColumnNames.BackSide], BackSidePage.Compose),
        new("Runs and passes", "run-game", "Run game", [ColumnNames.RunScheme], RunGamePage.Compose) { WhenEmpty = "no run with a charted scheme" },
        new("Runs and passes", "pass-game", "Passes and protection", [ColumnNames.PassConcept], PassGamePage.Compose) { WhenEmpty = "no pass with a charted concept" },
        new("Runs and passes", "targets", "Targets", [ColumnNames.Target], TargetsPage.Compose) { WhenEmpty = "no pass with a charted target" },
        new("Runs and passes", "pressure", "Against pressure", [ColumnNames.Rushers, ColumnNames.Gain], PressurePage.Compose) { WhenEmpty = "no pass" },
        new("Money downs", "third-down", "Third down", [], ThirdDownPage.Compose) { WhenEmpty = "no third down" },
        new("Money downs", "red-zone", "Red zone", [ColumnNames.BallOn], RedZonePage.Compose) { WhenEmpty = "no play in the red zone" },
        new("Money downs", "backed-up", "Backed up", [ColumnNames.BallOn], BackedUpPage.Compose) { WhenEmpty = "no snap inside their own 20" },
        new("Money downs", "tries", "Two-point tries", [], TriesPage.Compose) { WhyEmpty = TriesPage.WhyEmpty },
        new("Tells", "tells", "Tells", [], TellsPage.Compose) { WhenEmpty = "no situation had enough plays to search" },
        new("Tells", "guess", "How readable they are", [], GuessPage.Compose) { WhenEmpty = "it takes two games, one to learn from and one to guess" },
        new("How sure", "steadiness", "Steadiness", [], SteadinessPage.Compose) { WhenEmpty = "it takes three games" },
        new("How sure", "games", "Game by game", [], GamesPage.Compose),
        .. s_ofTheCharts,
    ];

    private static IReadOnlyList<PageEntry> DefensePages { get; } = [.. DefenseOrder.Pages.Take(1), s_weights, .. DefenseOrder.Pages.Skip(1), .. s_ofTheCharts];

    /// <summary>Names of all pages there are, of an offense and of a defense.</summary>
    public static IReadOnlyList<string> Anchors { get; } = [.. Pages.Concat(DefensePages).Select(page => page.Anchor).Distinct()];

    /// <summary>The whole booklet, of the side of the ball that is studied.</summary>
    /// <param name="study">What the pages speak of.</param>
    /// <param name="dated">Written into the file; the same study and date give the same bytes.</param>
    /// <param name="only">Anchors of the pages wanted; null = all.</param>
    public static ScoutingBooklet Compose(Study study, DateTimeOffset dated, IReadOnlyCollection<string>? only = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        var wanted = (study.Side == "defense" ? DefensePages : Pages).Where(entry => entry.IsWanted(study) && (only is null || only.Contains(entry.Anchor))).ToArray();
        var shown = wanted.Where(entry => !entry.SumsUp).ToArray();

        // A page is a function of the study alone, so they may be composed side by side.
        var placed = new PlacedPage[shown.Length];
        Parallel.For(0, shown.Length, i => placed[i] = Place(study, shown[i]));
        var anchors = placed.Where(page => page.Page is not null).Select(page => page.Entry.Anchor).Concat(wanted.Where(entry => entry.SumsUp).Select(entry => entry.Anchor));
        var whole = study with { Placed = placed, Anchors = [.. anchors] };
        var pages = wanted.Select(entry => placed.FirstOrDefault(page => page.Entry == entry) ?? Place(whole, entry));
        var sections = pages.Where(page => page.Page is not null).GroupBy(page => page.Entry.Section)
            .Select(group => new Section(group.Key, [.. group.Select(page => page.Page!)]));
        return new ScoutingBooklet(study.Opponent, study.Side, $"{study.Opponent} {study.Side}, scouting booklet", Footprint.Of(study), [.. sections], dated)
        {
            LikelyMeans = Footprint.LikelyMeans(study),
        };
    }

    private static PlacedPage Place(Study study, PageEntry entry)
    {
        var missing = entry.Needs.Where(column => !study.Plays.IsCharted(column)).ToArray();
        return new PlacedPage(entry, missing.Length > 0 || entry.Compose(study) is not { } page ? null : Weighing.Said(study, page), missing);
    }
}
