namespace Tendency.Breakdown.Fronts;

/// <summary>When a man who is not on the line joins the blocking.</summary>
public enum InsertKind
{
    None,

    /// <summary>The scheme has him by definition.</summary>
    Always,

    /// <summary>Only with a wing, an off-ball tight end or a second back to do it.</summary>
    IfOffBall,

    /// <summary>The deep back leads for another runner; nobody does from an empty backfield.</summary>
    BackLeads,
}

/// <summary>Where a floating nose fits by default.</summary>
public enum NoseRule
{
    /// <summary>The A gap away from the play.</summary>
    Lag,

    /// <summary>The A gap to the play.</summary>
    Play,
}

/// <summary>One run scheme as data: what it pulls, what it adds, whom it reads.</summary>
/// <param name="Name">Canonical name, with spaces.</param>
/// <param name="Family">zone, gap, perimeter, option, quarterback run or other.</param>
/// <param name="Aim">A, B, C, D or edge; empty when unknown.</param>
/// <param name="Pullers">Linemen who pull, from either side.</param>
/// <param name="FromBack">Those of them who leave the backside: each moves a gap to the play.</param>
/// <param name="Puller">Who pulls, in words; empty when nobody does.</param>
/// <param name="InsertToPlay">Whether the insert arrives at the play's side.</param>
/// <param name="InsertWord">What to call him.</param>
/// <param name="AddsPlay">Gaps a second runner adds to the play's side: quarterback, pitch.</param>
/// <param name="AddsBack">The same on the backside.</param>
/// <param name="AddWords">What to call the added gaps, in order.</param>
/// <param name="ReadMan">The man left for a read; "none" without one.</param>
/// <param name="LinebackerStays">Whether the backside linebacker must stay home.</param>
public sealed record RunScheme(
    string Name,
    string Family,
    string Aim,
    int Pullers,
    int FromBack,
    string Puller,
    InsertKind Insert,
    bool InsertToPlay,
    string InsertWord,
    int AddsPlay,
    int AddsBack,
    IReadOnlyList<string> AddWords,
    string ReadMan,
    string UsualSide,
    NoseRule Nose,
    bool LinebackerStays,
    string Rule)
{
    public const string Unknown = "unknown run";

    /// <summary>Whether a defender is read or a second runner threatens by the scheme's own design.</summary>
    public bool IsOption => string.Equals(Family, "option", StringComparison.Ordinal);

    public bool HasPuller => Pullers > 0;

    /// <summary>The men behind <see cref="Pullers"/>, in order.</summary>
    public IReadOnlyList<Pull> Pulls { get; init; } = [];

    public InsertStart InsertFrom { get; init; }

    public Carrier Carrier { get; init; }

    public LineBlocks Line { get; init; }
}
