using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.Reviews;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Booklet.Pages;

/// <summary>Everything the pages speak of: one opponent's counted plays, where they come from, and what was found in them.</summary>
/// <param name="Chosen">The counted plays, and what was left out and why.</param>
/// <param name="All">Every readable snap with its derived columns: tries and uncounted snaps stand only here.</param>
/// <param name="Charts">What reading the charts gave, row by row.</param>
/// <param name="Week">The staff's plan: names, dates, boundaries, level.</param>
public sealed record Study(StudiedPlays Chosen, PlayLog All, ReadLog Charts, WeekPlan Week)
{
    public PlayLog Plays => Chosen.Plays;

    /// <summary>Decides every printed range; its plays are the counted ones with the columns that only pages ask for.</summary>
    public LikelyRanges Ranges { get; init; } = new(OwnColumns.AddTo(Chosen.Plays), Week.Level);

    /// <summary>Level of every interval, in (0, 1).</summary>
    public double Level => Ranges.Level;

    /// <summary>The name on the cover.</summary>
    public string Opponent { get; } =
        Week.Opponent.Length > 0 ? Week.Opponent : Chosen.Subject.Length > 0 ? Chosen.Subject : "Opponent";

    /// <summary>"offense" or "defense": the word after the opponent's name.</summary>
    public string Side { get; init; } = "offense";

    /// <summary>Games with counted plays, in the order of the charts.</summary>
    public IReadOnlyList<string> Games { get; } = GamesOf(Chosen.Plays);

    /// <summary>"G1", "G2" … by game label: what play references print.</summary>
    public IReadOnlyDictionary<string, string> ShortGames { get; } =
        GamesOf(Chosen.Plays).Index().ToDictionary(game => game.Item, game => $"G{game.Index + 1}", StringComparer.Ordinal);

    /// <summary>How often they run, all counted plays together: the line most strips are read against.</summary>
    public Tally Runs { get; } = CrossTab.Share(Chosen.Plays, ColumnNames.Call, "run");

    public Tally Passes { get; } = CrossTab.Share(Chosen.Plays, ColumnNames.Call, "pass");

    /// <summary>The latest game's date in the week file; null = not said.</summary>
    public DateOnly? ChartedTo { get; } = Week.Charts.Max(chart => chart.Date);

    /// <summary>How much each game counts where a page says it is weighted; every other count is plain.</summary>
    public GameWeights Weights { get; init; } = GameWeights.Equal;

    /// <summary>How often they run, some games counted more: the line weighted run shares are read against.</summary>
    public WeightedShare WeightedRuns => Ranges.Weighted(Plays, ColumnNames.Call, "run", Weights);

    /// <summary>The front check; null = not made, then its pages are left out.</summary>
    public FrontCheck? Fronts { get; init; }

    /// <summary>Our front by situation; empty without a front check.</summary>
    public IReadOnlyList<FrontCardLine> FrontCard { get; init; } = [];

    /// <summary>Searches for tells, one an outcome: the call, the run's side, the slide.</summary>
    public IReadOnlyList<TellReport> Tells { get; init; } = [];

    /// <summary>What such lists were worth in a game left out; null where none could be tried.</summary>
    public SearchedAnew? TellsAnew { get; init; }

    /// <summary>How well calls are guessed on games held out; null = not tried.</summary>
    public GuessReport? Guess { get; init; }

    /// <summary>Habits followed from game to game, what moved most first; empty with fewer than three games.</summary>
    public IReadOnlyList<Steadiness> Steadiness { get; init; } = [];

    /// <summary>What is wrong with the charts; null = not audited.</summary>
    public AuditReport? Audit { get; init; }

    /// <summary>What changed since an earlier print; null = none was named.</summary>
    public Changes? Changes { get; init; }

    /// <summary>The pages that do not sum up, placed or missing: what brief and last page refer to.</summary>
    public IReadOnlyList<PlacedPage> Placed { get; init; } = [];

    /// <summary>Anchors a page may link to.</summary>
    public IReadOnlyCollection<string> Anchors { get; init; } = [];

    private static string[] GamesOf(PlayLog plays) => plays.Category(ColumnNames.Game).UsedLevels();
}
