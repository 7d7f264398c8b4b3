using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Rules that one row can break by itself.</summary>
internal static class RowRules
{
    public static readonly Rule DistanceBeyondGoal = new("R101", Severity.Error, "the distance is longer than the field left", "Correct distance or ball_on.", "distance > yards to the goal line.");
    public static readonly Rule FirstDownDistance = new("R102", Severity.Warning, "first down is neither ten nor goal", "Correct the distance, or chart the flag before it.", "First snap of a series with distance other than ten, or than the yards to the goal line inside the ten.");
    public static readonly Rule GainBeyondGoal = new("R103", Severity.Error, "the gain passes the goal line", "Correct gain or ball_on.", "gain > yards to the goal line.");
    public static readonly Rule LossBeyondGoal = new("R104", Severity.Error, "the loss passes the own goal line", "Correct gain or ball_on; a safety loses the yards to the goal line, no more.", "gain < yards to the goal line - 100.");
    public static readonly Rule TouchdownGain = new("R105", Severity.Error, "a touchdown does not gain the yards to the goal line", "Correct gain, ball_on or touchdown.", "touchdown is yes, result is rush, complete or scramble, and gain differs from the yards to the goal line.");
    public static readonly Rule GainBlank = new("R106", Severity.Warning, "a snap lacks its gain", "Fill the gain; where the next snap tells it, it is proposed.", "gain is blank on a play without a replayed or offset flag, in a game that charts it on nine plays of ten.");
    public static readonly Rule IncompleteGain = new("R107", Severity.Error, "an incomplete pass gains", "Correct gain or result.", "result is incomplete and gain is not 0.");
    public static readonly Rule SackGain = new("R108", Severity.Error, "a sack gains", "Correct the sign of the gain, or the result.", "result is sack and gain > 0.");
    public static readonly Rule InterceptionGain = new("R109", Severity.Warning, "an interception carries a gain", "Write 0: return yards do not belong here.", "result is interception and gain is not 0.");
    public static readonly Rule PassWithRun = new("R111", Severity.Error, "a pass carries a run", "Make the call rpo or run, or clear the run columns.", "call is pass and run_scheme, run_side or gap is filled.");
    public static readonly Rule RunWithPass = new("R112", Severity.Error, "a run carries a pass", "Make the call rpo or pass, or clear the pass columns.", "call is run and pass_concept, drop or protection is filled.");
    public static readonly Rule OptionWithoutRun = new("R113", Severity.Warning, "a run-pass option lacks its run", "Fill run_scheme.", "call is rpo, run_scheme is blank, and most options of the charts have one.");
    public static readonly Rule CallAgainstResult = new("R114", Severity.Error, "call and result contradict each other", "Correct call or result; the columns filled on the row tell which.", "call is run and result is complete, incomplete, interception or sack; or call is pass and result is rush.");
    public static readonly Rule ScrambleAsRun = new("R115", Severity.Warning, "a scramble is charted as a run", "Make the call pass: the coach called a pass.", "call is run and result is scramble.");
    public static readonly Rule AttachedWithoutTightEnd = new("R116", Severity.Error, "a tight end is attached without a tight end in the game", "Correct personnel or attached.", "The personnel's second digit is smaller than the number of attached sides.");
    public static readonly Rule BackAndSet = new("R117", Severity.Warning, "the back's side does not go with the set", "Correct back_set or back_side.", "back_set is empty and a back stands somewhere, or back_side is none in gun, pistol or under, where no other row of the charts has it so.");
    public static readonly Rule PistolSide = new("R118", Severity.Warning, "a back beside the quarterback in pistol", "Correct back_set or back_side.", "back_set is pistol, back_side strong or weak, and at least nine tenths of the charts' pistol rows have it otherwise.");
    public static readonly Rule PenaltyHalf = new("R119", Severity.Warning, "the flag is not fully charted", "Fill penalty_on, penalty_yards and penalty_effect.", "One of the three is filled and another blank; an offset flag needs no yards.");
    public static readonly Rule PenaltyTooLong = new("R120", Severity.Error, "the flag is longer than half the field", "Correct penalty_yards or ball_on.", "A replayed foul of the offense of more than half the distance to its own goal line, rounded up.");
    public static readonly Rule Kneel = new("R121", Severity.Warning, "a kneel seems to be charted as a run", "Make the call none.", "A run without scheme that loses one to three yards in the last two minutes of a half, in the fourth quarter not behind.");
    public static readonly Rule LongGain = new("R122", Severity.Note, "a very long gain or loss", "Look at the film once more.", "gain >= 50 or <= -15, and neither a touchdown nor the next snap confirms it.");
    public static readonly Rule StrengthAgainstWord = new("R123", Severity.Warning, "strength and formation name different sides", "Correct strength or the formation's side.", "The formation word ends in a side and strength is charted otherwise.");
    public static readonly Rule NoPlayWithCall = new("R124", Severity.Warning, "no play carries a call", "Make the call run or pass, or clear the row.", "call is none, result is none of blank, penalty, and a scheme or concept is filled.");
    public static readonly Rule EmptyWord = new("R125", Severity.Warning, "an empty formation has a back", "Correct formation, back_set or back_side.", "The formation's family is empty while back_side puts a back somewhere.");
    public static readonly Rule RunWithoutScheme = new("R126", Severity.Warning, "a run lacks its scheme", "Fill run_scheme; write unknown run if the angle is bad.", "call is run, result is rush, run_scheme is blank, and at least 95 % of the game's runs have one.");
    public static readonly Rule RunWithoutSide = new("R127", Severity.Warning, "a run lacks its side", "Fill run_side.", "call is run, run_side is blank, no sneak or wedge, and at least 95 % of the game's runs have one.");
    public static readonly Rule NoOpponent = new("R128", Severity.Error, "a team plays itself", "Correct offense or defense.", "offense equals defense.");
    public static readonly Rule ReadWithoutMan = new("R129", Severity.Note, "a read run says it has no read", "Correct read or run_scheme.", "run_scheme is a read or option scheme and read is none.");

    public static IReadOnlyList<CheckedRule> All { get; } =
    [
        new(DistanceBeyondGoal, BallOn), new(FirstDownDistance, Series), new(GainBeyondGoal, BallOn, Gain), new(LossBeyondGoal, BallOn, Gain), new(TouchdownGain, BallOn, Gain, Touchdown),
        new(GainBlank, Gain, Result), new(IncompleteGain, Gain, Result), new(SackGain, Gain, Result), new(InterceptionGain, Gain, Result),
        new(PassWithRun, RunScheme), new(RunWithPass, PassConcept), new(OptionWithoutRun, RunScheme), new(CallAgainstResult, Result), new(ScrambleAsRun, Result),
        new(AttachedWithoutTightEnd, Personnel, Attached), new(BackAndSet, BackSet, BackSide), new(PistolSide, BackSet, BackSide), new(PenaltyHalf, PenaltyOn, PenaltyEffect),
        new(PenaltyTooLong, BallOn, PenaltyYards, PenaltyEffect), new(Kneel, Quarter, Clock, Gain, RunScheme), new(LongGain, Gain), new(StrengthAgainstWord, Formation, Strength),
        new(NoPlayWithCall, Result), new(EmptyWord, Formation, BackSide), new(RunWithoutScheme, RunScheme), new(RunWithoutSide, RunSide), new(NoOpponent, Offense, Defense),
        new(ReadWithoutMan, RunScheme, Read),
    ];
}
