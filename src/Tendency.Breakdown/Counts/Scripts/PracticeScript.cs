using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>Snaps for a period of practice in the opponent's proportions, so that even twelve keep the mix.</summary>
/// <param name="Period">The period.</param>
/// <param name="Plays">The plays of the period it was drawn from.</param>
/// <param name="Snaps">In the order to run them.</param>
public sealed record PracticeScript(ScriptPeriod Period, PlayLog Plays, IReadOnlyList<ScriptSnap> Snaps)
{
    public const int UsualSnaps = 24;

    /// <summary>The one caution a script carries. The limits differ by governing body and week, so none is named.</summary>
    public const string Caution = "How much contact a practice may hold is limited by your governing body: check the limit before this period goes live.";

    /// <summary>Draws a script: stratified by call, then scheme or concept, then formation, each by largest remainders; then a real play for every snap.</summary>
    /// <param name="plays">Counted plays with their derived columns.</param>
    /// <param name="period">Which of them.</param>
    /// <param name="snaps">At least 1. A play is shown twice only when the period has fewer plays than this.</param>
    /// <param name="seed">The same plays, snaps and seed give the same script.</param>
    public static PracticeScript Draw(PlayLog plays, ScriptPeriod period, int snaps, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(snaps, 1);
        var from = period.From(plays);
        if (from.Rows == 0)
        {
            return new PracticeScript(period, from, []);
        }

        var chance = new Random(seed);
        var picks = new PlayPicks(from, snaps, chance);
        var strata = ScriptStratum.Of(from, snaps);
        var seats = FormationSeats.Of(from, strata, snaps);
        var cells = strata.Zip(seats).SelectMany(pair => pair.Second.Select(seat => (Rows: pair.First.Rows[seat.Key], Snaps: seat.Value)));

        // Cells with the least to choose from first: the others make up for what they had to take.
        var rows = cells.OrderBy(cell => cell.Rows.Length - cell.Snaps).SelectMany(cell => Enumerable.Repeat(cell.Rows, cell.Snaps)).Select(picks.Pick).ToArray();
        chance.Shuffle(rows);
        return new PracticeScript(period, from, [.. rows.Select((row, i) => ScriptSnap.Of(from, row, i + 1))]);
    }
}
