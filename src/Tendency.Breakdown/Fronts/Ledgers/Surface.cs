namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>The offense's surface at the snap, seen from the run: who is attached, who stands off the ball and can join the blocking.</summary>
public sealed record Surface
{
    /// <summary>Attached tight ends on the play's side.</summary>
    public int AttachedPlay { get; init; }

    /// <summary>Attached tight ends on the backside.</summary>
    public int AttachedBack { get; init; }

    /// <summary>Off-ball men who can block at the play's side: a wing or off-ball tight end there, or a second back.</summary>
    public int OffBall { get; init; }

    /// <summary>Off-line men just outside an attached tight end of the play's side: blockers of the surface unless the scheme brings them in.</summary>
    public int WingPlay { get; init; }

    /// <summary>The same on the backside.</summary>
    public int WingBack { get; init; }

    /// <summary>No back in the backfield, so no back can lead.</summary>
    public bool IsEmpty { get; init; }

    /// <summary>The strength's side: the tight end's, else the charted strength. Fronts set by strength turn with it.</summary>
    public Flank Strength { get; init; } = Flank.Play;

    /// <summary>Where a single overhang stands; null = on the strength.</summary>
    public Flank? Overhang { get; init; }

    /// <summary>The run against the back's side; null when the back gives none. Fronts set by the back turn with it.</summary>
    public RunTo? RunTo { get; init; }

    /// <summary>Gaps of a side before anybody moves: two linemen outside the center, each attached man, and one (rule R1).</summary>
    public int BaseGaps(Flank flank) => 3 + (flank == Flank.Play ? AttachedPlay : AttachedBack);

    /// <summary>The surface a scheme leaves: a wing it brings in comes off the ball, every other one lengthens his side.</summary>
    /// <remarks>Whoever crosses comes from the side he leaves; a second back or an off-ball tight end goes before a wing. Common practice, no source.</remarks>
    internal Surface Left(RunScheme scheme)
    {
        var brings = OffBall == 0 && (scheme.Insert == InsertKind.Always || (scheme.Insert == InsertKind.IfOffBall && WingPlay > 0));
        var fromPlay = brings && WingPlay > 0 && (scheme.InsertWord != "wrap" || WingBack == 0);
        var fromBack = brings && WingBack > 0 && !fromPlay;
        return this with
        {
            AttachedPlay = AttachedPlay + WingPlay - (fromPlay ? 1 : 0),
            AttachedBack = AttachedBack + WingBack - (fromBack ? 1 : 0),
            OffBall = OffBall + (fromPlay || fromBack ? 1 : 0),
            WingPlay = 0,
            WingBack = 0,
        };
    }
}
