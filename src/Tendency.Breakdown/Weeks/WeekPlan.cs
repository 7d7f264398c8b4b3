namespace Tendency.Breakdown.Weeks;

/// <summary>What a staff says about its week: who is studied, which charts, own words, boundaries, what to leave out.</summary>
public sealed record WeekPlan
{
    /// <summary>The plan of a folder without a week file.</summary>
    public static WeekPlan Default { get; } = new();

    /// <summary>Name on the booklet's cover; empty = the subject's name.</summary>
    public string Opponent { get; init; } = "";

    /// <summary>Whose snaps are studied; empty = the only offense in the charts.</summary>
    public string Subject { get; init; } = "";

    /// <summary>Charts in order; empty = every chart of the folder.</summary>
    public IReadOnlyList<WeekChart> Charts { get; init; } = [];

    /// <summary>Our column name to the staff's own header.</summary>
    public IReadOnlyDictionary<string, string> Headers { get; init; } = new Dictionary<string, string>();

    /// <summary>File name of the staff's glossary beside the week file; empty = none.</summary>
    public string GlossaryFile { get; init; } = "";

    /// <summary>File name of accepted corrections beside the week file; empty = none.</summary>
    public string CorrectionsFile { get; init; } = "";

    public Boundaries Boundaries { get; init; } = new();

    /// <summary>Plays left out of every count.</summary>
    public IReadOnlyList<LeaveOut> LeaveOut { get; init; } = [];

    /// <summary>How a run-pass option counts: by result, as run, as pass, or as its own class.</summary>
    public RpoCounting Rpo { get; init; } = RpoCounting.ByResult;

    /// <summary>Half-life of a game's weight, in games; 0 = every game weighs the same.</summary>
    public double HalfLifeGames { get; init; }

    /// <summary>Whether games against defenses that look like ours, by the fronts of the plan, count more.</summary>
    public bool LikeOurDefense { get; init; }

    /// <summary>Line of the week file that says so, from 1; 0 = no such line.</summary>
    public int LikeOurDefenseLine { get; init; }

    /// <summary>Level of every interval, in (0, 1).</summary>
    public double Level { get; init; } = 0.95;

    /// <summary>Fronts in our plan, by name; empty = all known fronts.</summary>
    public IReadOnlyList<string> Fronts { get; init; } = [];

    /// <summary>Line of the week file the fronts are written in, from 1; 0 = no such line.</summary>
    public int FrontsLine { get; init; }

    /// <summary>File names, beside the week file, of the staff's own fronts and ratings; empty = the built-in ones.</summary>
    public string FrontsFile { get; init; } = "";

    public string RatingsFile { get; init; } = "";

    /// <summary>How many plays of film the expert rating of a front is worth.</summary>
    public double PriorPlays { get; init; } = 8;

    /// <summary>Change of run success a rating point stands for.</summary>
    public double RatingStep { get; init; } = 0.06;

    /// <summary>Change of pass success a point of a front's rush stands for; our choice, no source.</summary>
    public double RushStep { get; init; } = 0.03;
}

/// <summary>One chart of the week.</summary>
/// <param name="File">File name beside the week file.</param>
/// <param name="Game">Label that replaces the chart's own when the file holds one game; empty = the chart's.</param>
/// <param name="Date">Day of the game; null = not said.</param>
/// <param name="Tags">What makes the game foreign: other quarterback, weather.</param>
public sealed record WeekChart(string File, string Game, DateOnly? Date, IReadOnlyList<string> Tags);

/// <summary>A rule that leaves plays out: each condition that is set must hold.</summary>
/// <param name="Why">Printed beside the count left out.</param>
public sealed record LeaveOut(string Why)
{
    public string Game { get; init; } = "";

    public int? Quarter { get; init; }

    /// <summary>Leaves out plays whose margin is farther from zero than this, in points.</summary>
    public int? MarginBeyond { get; init; }

    /// <summary>Column or dimension and the values that leave a play out.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Values { get; init; } = new Dictionary<string, IReadOnlyList<string>>();
}

/// <summary>How a call <c>rpo</c> counts among runs and passes.</summary>
public enum RpoCounting
{
    ByResult,
    AsRun,
    AsPass,
    OwnClass,
}
