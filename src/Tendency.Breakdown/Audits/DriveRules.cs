using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Rules of the drive walk: what one snap must lead to within its series.</summary>
internal static class DriveRules
{
    private const string How = "Down, distance, spot, gain and flag of a snap give what the next must be; of all single changes near a step that does not follow, the one after which most cells agree is named, the likelier slip first.";

    public static readonly Rule WrongDown = new("D101", Severity.Error, "the down does not follow", "Look at the film, then correct the down.", How);
    public static readonly Rule WrongDistance = new("D102", Severity.Error, "the distance does not follow", "Look at the film, then correct the distance.", How);
    public static readonly Rule WrongSpot = new("D103", Severity.Error, "the spot does not follow", "Look at the film, then correct ball_on.", How);
    public static readonly Rule WrongGain = new("D104", Severity.Error, "the gain does not lead to the next snap", "Look at the film, then correct the gain.", How);
    public static readonly Rule WrongResult = new("D105", Severity.Error, "the result does not go with the drive", "Look at the film, then correct the result.", How);
    public static readonly Rule WrongTouchdown = new("D106", Severity.Error, "touchdown and gain disagree", "Look at the film, then correct touchdown or gain.", "A touchdown of the offense gains exactly the yards to the goal line, and a gain of as many is a touchdown; after it the series is over.");
    public static readonly Rule WrongFlag = new("D107", Severity.Error, "the flag does not lead to the next snap", "Look at the film, then correct the penalty columns.", "A replayed down moves by the yards of the flag, one added on by gain and flag, one declined by the gain alone, one offset not at all.");
    public static readonly Rule MissingSnap = new("D108", Severity.Warning, "a snap seems to be missing", "Look at the film and chart the snap, or the flag, between the two.", "Down, distance and spot all jump by what one more snap or flag would explain, or play numbers skip inside the series.");
    public static readonly Rule DuplicateSnap = new("D109", Severity.Error, "a snap is charted twice", "Delete the second row.", "Two neighbours agree in down, distance, spot, gain, call and result, and the drive adds up without one of them.");
    public static readonly Rule SwappedSnaps = new("D110", Severity.Error, "two snaps have changed places", "Exchange the two rows.", "The drive adds up when two neighbours are exchanged.");
    public static readonly Rule DoesNotFollow = new("D111", Severity.Error, "a snap does not follow from the one before", "Look at the film from the snap before on.", "No change of a single cell or row mends the step.");
    public static readonly Rule WrongSeries = new("D112", Severity.Error, "a snap stands under the wrong series", "Correct the series number.", "Both series add up when the row is counted with its neighbour.");
    public static readonly Rule MustEnd = new("D113", Severity.Error, "the series goes on after it must end", "Correct what ended the series, or give the next snap a new series number.", "A touchdown, an interception or a failed fourth down ends a series.");
    public static readonly Rule HalftimeInside = new("D114", Severity.Warning, "halftime lies inside a series", "Give the first snap of the second half a new series number.", "A series has snaps of the second and of the third quarter.");
    public static readonly Rule StopsAfterFirstDown = new("D117", Severity.Warning, "the series stops after a first down", "Look at the film: a gain or result may be wrong, or snaps are missing.", "The last snap of a series on third or fourth down gains a first down, without touchdown, turnover or flag, more than 40 seconds before the half ends, and the offense's next series follows in the same half.");
    public static readonly Rule OffByOne = new("D115", Severity.Warning, "a yard is missing or too many", "Look at the film; spots are rounded to whole yards.", "As the other rules of the walk, where the change is of one yard.");
    public static readonly Rule Rounded = new("D116", Severity.Note, "spots are rounded", "Nothing; steps that are a yard off are not reported in this game.", "At least four steps and 8 % of a game's steps are off by exactly one yard.");

    public static IReadOnlyList<CheckedRule> All { get; } =
    [
        new(WrongDown), new(WrongDistance), new(WrongSpot, BallOn), new(WrongGain, Gain), new(WrongResult, Gain, Result), new(WrongTouchdown, BallOn, Gain, Touchdown),
        new(WrongFlag, PenaltyOn, PenaltyYards, PenaltyEffect), new(MissingSnap, Gain), new(DuplicateSnap), new(SwappedSnaps), new(DoesNotFollow, Gain),
        new(WrongSeries, Series), new(MustEnd), new(HalftimeInside, Series, Quarter), new(StopsAfterFirstDown, Series, Quarter, BallOn, Gain, Result), new(OffByOne, Gain), new(Rounded, BallOn, Gain),
    ];
}
