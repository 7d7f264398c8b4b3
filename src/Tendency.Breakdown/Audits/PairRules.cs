using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Rules about two neighbouring rows beside the drive walk: order, hash, clock, score.</summary>
internal static class PairRules
{
    public static readonly Rule PlayNumber = new("P101", Severity.Error, "play numbers do not rise", "Correct the number, or put the row where it belongs.", "The fewest rows without which the numbers of a game rise.");
    public static readonly Rule SamePlayNumber = new("P102", Severity.Error, "a play number is given twice", "Correct one of the numbers, or delete the row if it is the same snap.", "Two rows of a game have the same number.");
    public static readonly Rule HashAfterIncomplete = new("P103", Severity.Warning, "the hash changes after an incomplete pass", "Correct the hash; the ball goes back to where it was.", "The next snap of the series after an incomplete pass without a flag, where at least nine tenths of such steps in the game keep the hash.");
    public static readonly Rule HashAfterReplay = new("P104", Severity.Warning, "the hash changes though the down is replayed", "Correct the hash.", "The next snap after a flag that replays the down or offsets, where at least nine tenths of such steps in the game keep the hash.");
    public static readonly Rule QuarterFalls = new("P105", Severity.Error, "the quarter does not fit its neighbours", "Correct the quarter.", "The fewest rows without which the quarters of a game never fall, and rows alone in another quarter.");
    public static readonly Rule ClockRises = new("P106", Severity.Error, "the clock goes up", "Correct the clock.", "The fewest rows without which the clock of a quarter never rises; one change of a digit that fits between the neighbours is proposed.");
    public static readonly Rule MarginInSeries = new("P107", Severity.Warning, "the margin changes inside a series", "Correct the margin.", "A snap whose margin differs from all others of its series, of three at least.");
    public static readonly Rule OffenseInSeries = new("P108", Severity.Error, "another team has the ball in the middle of a series", "Correct offense and defense.", "One snap between two of the same series has another offense, and the drive adds up with it.");
    public static readonly Rule TooSoon = new("P109", Severity.Note, "two snaps within four seconds", "Look at the clock once more.", "Less than four seconds between a run or a completed pass and the next snap of the series.");
    public static readonly Rule RowsSwapped = new("P110", Severity.Warning, "a row stands before the one it follows", "Put the rows in the order of their numbers.", "Two neighbouring rows whose numbers are in the wrong order and fit when exchanged.");

    public static IReadOnlyList<CheckedRule> All { get; } =
    [
        new(PlayNumber), new(SamePlayNumber), new(HashAfterIncomplete, Hash, Result), new(HashAfterReplay, Hash, PenaltyEffect), new(QuarterFalls, Quarter), new(ClockRises, Clock, Quarter),
        new(MarginInSeries, Margin, Series), new(OffenseInSeries, Offense, Series), new(TooSoon, Clock, Quarter, Result), new(RowsSwapped),
    ];
}
