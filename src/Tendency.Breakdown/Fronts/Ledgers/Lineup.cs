namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>The men who fit a run at the snap, and those who come late.</summary>
/// <param name="Held">The man a throw holds, so that he fits nothing; null = none.</param>
internal sealed record Lineup(IReadOnlyList<Defender> Now, IReadOnlyList<Defender> Late, Defender? Held)
{
    public int Count(Flank flank, bool late) =>
        Now.Count(d => d.Flank == flank) + (late ? Late.Count(d => d.Flank == flank) : 0);

    /// <summary>Rules F1 to F3: who counts where, before and after the safeties arrive.</summary>
    /// <param name="nose">Where a floating nose fits; null = the scheme's default.</param>
    public static Lineup Of(Front front, RunScheme scheme, Surface surface, Tag tag, Shell shell, RunGaps gaps, NoseRule? nose)
    {
        var now = new List<Defender>();
        var to = ToFlank(front, surface);
        now.AddRange(front.LineTo.Select(t => OnLine(t, to)));
        now.AddRange(front.LineOff.Select(t => OnLine(t, to.Other())));
        if (front.Nose != NoseKind.Fixed)
        {
            var lags = front.Nose == NoseKind.Floats && (nose ?? scheme.Nose) == NoseRule.Lag;
            now.Add(new Defender("nose", lags ? Flank.Back : Flank.Play, Role.Line, "0", Stand.Middle));
        }

        now.AddRange(Linebackers(front, scheme));
        now.AddRange(Overhangs(front, surface));
        var held = tag == Tag.Rpo ? TakeOutTheReadMan(now) : null;

        var late = new List<Defender>();
        if (front.HasThreeSafeties)
        {
            ThreeSafeties(front, surface, shell, to, now, late, gaps);
        }
        else if (front.Late == LateHelp.StrongSafety)
        {
            late.Add(new Defender("strong safety", surface.Strength, Role.Safety));
        }
        else
        {
            var flank = NeedsHelp(now, late, gaps);
            if (front.Late == LateHelp.OneSafety)
            {
                late.Add(new Defender("safety", flank, Role.Safety));
            }
            else if (flank == Flank.Back)
            {
                late.Add(new Defender("post safety", flank, Role.Safety, "", Stand.Middle));
            }
        }

        return new Lineup(now, late, held);
    }

    /// <summary>The flank that a front's "to" side is on.</summary>
    public static Flank ToFlank(Front front, Surface surface) => (front.SetBy, surface.RunTo) switch
    {
        (SetBy.Back, RunTo.ToBack) => Flank.Play,
        (SetBy.Back, RunTo.Away) => Flank.Back,
        _ => surface.Strength,
    };

    private static Defender OnLine(string technique, Flank flank) =>
        new(technique == "1" ? "shade" : technique, flank, Role.Line, technique);

    private static IEnumerable<Defender> Linebackers(Front front, RunScheme scheme)
    {
        for (var i = 0; i < front.Linebackers; i++)
        {
            var last = i == front.Linebackers - 1 && i > 0;
            var name = i == 0 ? "playside linebacker" : last ? "backside linebacker" : "middle linebacker";
            var stand = front.Linebackers == 1 ? Stand.Middle : i == 0 ? Stand.Play : last ? Stand.Back : Stand.Middle;
            yield return new Defender(name, last && scheme.LinebackerStays ? Flank.Back : Flank.Play, Role.Linebacker, "", stand);
        }
    }

    private static IEnumerable<Defender> Overhangs(Front front, Surface surface)
    {
        var side = surface.Overhang ?? surface.Strength;
        for (var i = 0; i < front.Overhangs; i++)
        {
            yield return new Defender("overhang", i == 0 ? side : side.Other(), Role.Overhang);
        }
    }

    /// <summary>Rule R5: the man a throw is read off leaves the fit; an overhang, else the linebacker from the backside.</summary>
    private static Defender? TakeOutTheReadMan(List<Defender> now)
    {
        var held = now.FindLast(d => d.Role == Role.Overhang) ?? now.FindLast(d => d.Role == Role.Linebacker);
        if (held is not null)
        {
            now.Remove(held);
        }

        return held;
    }

    private static void ThreeSafeties(Front front, Surface surface, Shell shell, Flank to, List<Defender> now, List<Defender> late, RunGaps gaps)
    {
        var open = front.Late switch
        {
            LateHelp.ToSafetyAndMiddle => to,
            LateHelp.OffSafetyAndMiddle => to.Other(),
            _ => (surface.Overhang ?? surface.Strength).Other(),
        };
        switch (shell)
        {
            case Shell.TwoDeep:
                late.Add(new Defender("outside safety", open, Role.Safety));
                late.Add(new Defender("middle safety", NeedsHelp(now, late, gaps), Role.Safety, "", Stand.Middle));
                break;
            case Shell.Invert:
                now.Add(new Defender("outside safety", open, Role.Overhang));
                break;
            case Shell.Cloud:
                now.Add(new Defender("corner", open, Role.Overhang));
                late.Add(new Defender("outside safety", open, Role.Safety));
                break;
            case Shell.Buzz:
                now.Add(new Defender("middle safety", Flank.Play, Role.Linebacker, "", Stand.Middle));
                break;
            default:
                now.RemoveAll(d => d.Role == Role.Overhang);
                late.Add(new Defender("middle safety", NeedsHelp(now, late, gaps), Role.Safety, "", Stand.Middle));
                break;
        }
    }

    /// <summary>Rule F2: the backside when it is short, and shorter than the play's side; else the point of attack.</summary>
    private static Flank NeedsHelp(List<Defender> now, List<Defender> late, RunGaps gaps)
    {
        int Spare(Flank flank, int count) => now.Count(d => d.Flank == flank) + late.Count(d => d.Flank == flank) - count;
        var back = Spare(Flank.Back, gaps.Back.Count);
        return back < 0 && back < Spare(Flank.Play, gaps.Play.Count) ? Flank.Back : Flank.Play;
    }
}
