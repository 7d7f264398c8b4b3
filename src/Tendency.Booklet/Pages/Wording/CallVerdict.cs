using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>Run or pass in one situation, each against the team's own rate.</summary>
internal sealed record CallVerdict(Share Run, Share Pass)
{
    public static CallVerdict Of(Study study, PlayLog plays) => new(study.RunShare(plays), study.PassShare(plays));

    /// <summary>"run", "nearly always throw", "throw more than usual"; null when no lean is sure.</summary>
    public string? Doing => Run.Doing("run") ?? Pass.Doing("throw");

    public bool SureRun => Run.Lean() == Lean.Above && Run.Likely!.Value.Low > .5;

    public bool SurePass => Pass.Lean() == Lean.Above && Pass.Likely!.Value.Low > .5;
}
