using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>Run or pass in one situation, each against the team's own rate.</summary>
internal sealed record CallVerdict(Share Run, Share Pass)
{
    public static CallVerdict Of(Study study, PlayLog plays) => new(study.RunShare(plays), study.PassShare(plays));

    /// <summary>Fewest plays a sentence speaks of: fewer stand in a table, but no plan is made of them (common practice: watch from eight).</summary>
    public const int FewestPlays = 8;

    /// <summary>"run", "nearly always throw", "throw more than usual"; null when no lean is sure.</summary>
    public string? Doing => DoingRun ?? DoingPass;

    public string? DoingRun => Run.Plays < FewestPlays ? null : Run.Doing("run");

    /// <summary>The run dot must be solid too: an undecided option is neither run nor pass, and a page shows runs.</summary>
    public string? DoingPass => Pass.Plays < FewestPlays || Run.Lean() != Lean.Below ? null : Pass.Doing("throw");

    public bool SureRun => DoingRun is not null && Run.Likely!.Value.Low > .5;

    public bool SurePass => DoingPass is not null && Pass.Likely!.Value.Low > .5;
}
