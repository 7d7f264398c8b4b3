namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>Gaps and fitters of one side.</summary>
/// <param name="Gaps">Gaps to be defended.</param>
/// <param name="Now">Men who fit at the snap.</param>
/// <param name="Late">Those and the safeties who arrive.</param>
public readonly record struct FlankCount(int Gaps, int Now, int Late)
{
    public int SpareNow => Now - Gaps;

    public int SpareLate => Late - Gaps;

    public static FlankCount operator +(FlankCount a, FlankCount b) => new(a.Gaps + b.Gaps, a.Now + b.Now, a.Late + b.Late);

    public override string ToString() => $"{Signed(SpareNow)}/{Signed(SpareLate)}";

    private static string Signed(int n) => n > 0 ? $"+{n}" : $"{n}";
}

/// <summary>The gap ledger: what a run makes and who is there, at the snap and once the safeties arrive. It counts men; the rating judges angles.</summary>
/// <param name="Fits">Every gap with its man, the play's side first, from the inside out.</param>
/// <param name="Spare">Men without a gap, the play's side first.</param>
/// <param name="Sentence">What it comes to, for a coach.</param>
public sealed record GapLedger(
    Front Front,
    RunScheme Scheme,
    Surface Surface,
    FlankCount Play,
    FlankCount Back,
    IReadOnlyList<GapFit> Fits,
    IReadOnlyList<string> Spare,
    IReadOnlyList<LeverageFlag> Flags,
    string Sentence)
{
    /// <summary>What is written where the surface was not charted.</summary>
    public const string Unknown = "unknown";

    /// <summary>The surface before the scheme took a wing off it or left him on it; null = as <see cref="Surface"/>.</summary>
    public Surface? Charted { get; init; }

    public Tag Tag { get; init; }

    /// <summary>The men behind <see cref="Spare"/>.</summary>
    public IReadOnlyList<Defender> Free { get; init; } = [];

    /// <summary>The safeties who arrive, with a gap or without.</summary>
    public IReadOnlyList<Defender> Late { get; init; } = [];

    /// <summary>The man a throw holds; null = none.</summary>
    public Defender? Held { get; init; }

    /// <summary>Blockers who leave their place, and the gap each arrives at.</summary>
    public IReadOnlyList<BlockerMove> Moves { get; init; } = [];

    /// <summary>Men counted on a side's surface who stand off the line: wings.</summary>
    public int Wings(Flank flank) => Charted is null ? 0 : Surface.BaseGaps(flank) - Charted.BaseGaps(flank);

    /// <summary>The flank that the front's "to" side is on.</summary>
    public Flank SetTo => Lineup.ToFlank(Front, Surface);

    public FlankCount All => Play + Back;

    /// <summary>Spare men as <c>play now/late; back now/late; all now/late</c>.</summary>
    public string Text => $"play {Play}; back {Back}; all {All}";

    /// <summary>Counts a front against a run.</summary>
    /// <param name="nose">Where a floating nose fits; null = the scheme's default: away from the play against zone, to it against gap runs.</param>
    public static GapLedger Of(
        Front front, RunScheme scheme, Surface surface, Tag tag = Tag.None, Shell shell = Shell.TwoDeep, NoseRule? nose = null)
    {
        var charted = surface;
        surface = surface.Left(scheme);
        var gaps = RunGaps.Of(scheme, surface, tag);
        var lineup = Lineup.Of(front, scheme, surface, tag, shell, gaps, nose);
        var play = new FlankCount(gaps.Play.Count, lineup.Count(Flank.Play, false), lineup.Count(Flank.Play, true));
        var back = new FlankCount(gaps.Back.Count, lineup.Count(Flank.Back, false), lineup.Count(Flank.Back, true));
        var (playFits, playSpare) = GapAssignment.Of(Flank.Play, gaps.Play, lineup, scheme.FromBack > 0);
        var (backFits, backSpare) = GapAssignment.Of(Flank.Back, gaps.Back, lineup, false);
        var flags = LeverageFlags.Of(front, scheme, surface, play, back, lineup);
        return new GapLedger(
            front,
            scheme,
            surface,
            play,
            back,
            [.. playFits, .. backFits],
            [.. playSpare.Concat(backSpare).Select(man => man.Name)],
            flags,
            LedgerSentence.Of(front, scheme, play, back, flags))
        {
            Charted = charted,
            Tag = tag,
            Free = [.. playSpare, .. backSpare],
            Late = lineup.Late,
            Held = lineup.Held,
            Moves = gaps.Moves,
        };
    }
}
