using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>Counted shares with their likely range at the study's level.</summary>
internal static class Shares
{
    /// <summary>How often a column holds a value, among the plays in which it is charted.</summary>
    public static Share Of(this Study study, PlayLog plays, string column, string value, double? line = null) =>
        study.Of(CrossTab.Share(plays, column, value), line);

    public static Share Of(this Study study, Tally tally, double? line = null) =>
        new(tally.Count, tally.Plays, Estimate.Of(tally, study.Level).Likely, line);

    /// <summary>Run share against the team's.</summary>
    public static Share RunShare(this Study study, PlayLog plays) => study.Of(plays, ColumnNames.Call, "run", study.Runs.Share);

    /// <summary>Pass share against the team's.</summary>
    public static Share PassShare(this Study study, PlayLog plays) => study.Of(plays, ColumnNames.Call, "pass", study.Passes.Share);

    /// <summary>The same share with some games counted more; the plain one when all count alike.</summary>
    public static WeightedShare Weighted(this Study study, PlayLog plays, string column, string value) =>
        study.Weights.Share(plays, column, value, study.Level);

    /// <summary>The same count against another line.</summary>
    public static Share Against(this Share share, double? line) => share with { Baseline = line };

    /// <summary>One share a game, in the order of the games; a game without such plays has none.</summary>
    public static IReadOnlyList<Share> ByGame(this Study study, PlayLog plays, string column, string value, double? line = null) =>
        [.. study.Games.Select(game => study.Of(plays.Where(ColumnNames.Game, game), column, value, line))];

    /// <summary>"G1" … with the play's number and clip, in film order.</summary>
    public static PlayList ListOf(this Study study, PlayLog plays)
    {
        var games = plays.Category(ColumnNames.Game);
        var numbers = plays.Number(ColumnNames.Play);
        var rows = Enumerable.Range(0, plays.Rows).OrderBy(row => games.Codes[row]).ThenBy(row => numbers[row]);
        return new PlayList([.. rows.Select(row => new PlayRef(games[row], numbers[row] ?? 0, plays.Text(ColumnNames.Clip, row)))], study.ShortGames);
    }
}
