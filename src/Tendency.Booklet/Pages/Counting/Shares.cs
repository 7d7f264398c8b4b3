using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>Counted shares with their likely range at the study's level.</summary>
internal static class Shares
{
    /// <summary>How often a column holds a value, among the plays in which it is charted.</summary>
    public static Share Of(this Study study, PlayLog plays, string column, string value, double? line = null) =>
        study.Of(CrossTab.Share(plays, column, value), plays, column, value, line);

    /// <summary>The same of a count made elsewhere, of the plays in which the column is charted. Without a value its range rests on the column as a whole.</summary>
    public static Share Of(this Study study, Tally tally, PlayLog plays, string column, string? value, double? line = null) =>
        new(tally.Count, tally.Plays, study.Ranges.Of(tally, plays, column, value), line);

    /// <summary>What was done in one game: its own plays are all there is to say, so they count in full.</summary>
    public static Share InGame(this Study study, Tally game, double? line = null) => new(game.Count, game.Plays, Estimate.Of(game, study.Level).Likely, line);

    /// <summary>
    /// The share to rank by, and to recommend by: a situation with few plays leans on those it is a part of, so that 4 of 4 does not beat 18 of 20.
    /// The plain count is always printed beside it.
    /// </summary>
    /// <param name="study">Gives the plays that all situations are a part of.</param>
    /// <param name="column">Column of the outcome.</param>
    /// <param name="value">The outcome.</param>
    /// <param name="path">The situations, the widest first, each a part of the one before.</param>
    public static double Expected(this Study study, string column, string value, params IEnumerable<PlayLog> path) =>
        Shrunk.Share([study.Ranges.Plays, .. path], column, value, study.Level).Share;

    /// <summary>How many plays a lean moves, by the expected share: what ranks frequent and clear leans before rare ones.</summary>
    /// <param name="line">The rate it is compared with; none = the lean moves nothing.</param>
    /// <param name="within">The situations it is a part of, the widest first.</param>
    public static double Moves(this Study study, PlayLog plays, string column, string value, double? line, params IEnumerable<PlayLog> within) =>
        line is { } usual ? plays.Rows * Math.Abs(study.Expected(column, value, [.. within, plays]) - usual) : 0;

    /// <summary>Run share against the team's.</summary>
    public static Share RunShare(this Study study, PlayLog plays) => study.Of(plays, ColumnNames.Call, "run", study.Runs.Share);

    /// <summary>Pass share against the team's.</summary>
    public static Share PassShare(this Study study, PlayLog plays) => study.Of(plays, ColumnNames.Call, "pass", study.Passes.Share);

    /// <summary>The same share with some games counted more; the plain one when all count alike.</summary>
    public static WeightedShare Weighted(this Study study, PlayLog plays, string column, string value) =>
        study.Ranges.Weighted(plays, column, value, study.Weights);

    /// <summary>The same count against another line.</summary>
    public static Share Against(this Share share, double? line) => share with { Baseline = line };

    /// <summary>One share a game, in the order of the games; a game without such plays has none.</summary>
    public static IReadOnlyList<Share> ByGame(this Study study, PlayLog plays, string column, string value, double? line = null) =>
        [.. study.Games.Select(game => study.InGame(CrossTab.Share(plays.Where(ColumnNames.Game, game), column, value), line))];

    /// <summary>"G1" … with the play's number and clip, in film order.</summary>
    public static PlayList ListOf(this Study study, PlayLog plays)
    {
        var games = plays.Category(ColumnNames.Game);
        var numbers = plays.Number(ColumnNames.Play);
        var rows = Enumerable.Range(0, plays.Rows).OrderBy(row => games.Codes[row]).ThenBy(row => numbers[row]);
        return new PlayList([.. rows.Select(row => new PlayRef(games[row], numbers[row] ?? 0, plays.Text(ColumnNames.Clip, row)))], study.ShortGames);
    }
}
