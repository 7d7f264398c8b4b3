using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Findings;

/// <summary>
/// What a list of tells is worth: the whole search, what it drops included, on the other games alone, and what it lists there tried on the
/// game left out; every game in turn.
/// </summary>
/// <param name="Tells">Tells listed that came up in the game left out.</param>
/// <param name="Plays">Plays there on which they came up; a play counts once for every tell.</param>
/// <param name="Count">Those with the call that was told.</param>
/// <param name="ShareFound">Share of it in the games they were found in, weighted by the plays there.</param>
/// <param name="UsualShare">Share of it on all plays of those games, weighted alike.</param>
public sealed record SearchedAnew(int Tells, int Plays, int Count, double ShareFound, double UsualShare)
{
    /// <summary>With more games than this, several are left out at a time, so that the work stays bounded.</summary>
    private const int MostFolds = 20;

    /// <returns>Null where nothing was listed, or there is one game only.</returns>
    public static SearchedAnew? Of(PlayLog plays, string outcomeColumn, TellOptions options)
    {
        var game = plays.Category(ColumnNames.Game);
        var fold = game.UsedLevels().Index().ToDictionary(g => g.Item, g => g.Index % MostFolds, StringComparer.Ordinal);
        var folds = Math.Min(fold.Count, MostFolds);
        if (folds < 2)
        {
            return null;
        }

        var tried = Enumerable.Range(0, folds).AsParallel().AsOrdered()
            .SelectMany(left => Try(plays.Where(row => fold[game[row]] != left), plays.Where(row => fold[game[row]] == left), outcomeColumn, options))
            .ToArray();
        double all = tried.Sum(t => t.Plays);
        return all == 0 ? null : new SearchedAnew(
            tried.Length, (int)all, tried.Sum(t => t.Count), tried.Sum(t => t.Plays * t.Tell.Share) / all, tried.Sum(t => t.Plays * t.Tell.BaseShare) / all);
    }

    /// <summary>Several searches as one; null without any.</summary>
    public static SearchedAnew? Sum(IReadOnlyCollection<SearchedAnew> parts)
    {
        double all = parts.Sum(part => part.Plays);
        return all == 0 ? null : new SearchedAnew(
            parts.Sum(part => part.Tells), (int)all, parts.Sum(part => part.Count), parts.Sum(part => part.Plays * part.ShareFound) / all, parts.Sum(part => part.Plays * part.UsualShare) / all);
    }

    private static IEnumerable<(Tell Tell, int Plays, int Count)> Try(PlayLog others, PlayLog left, string outcomeColumn, TellOptions options)
    {
        var outcome = left.Dimension(outcomeColumn);
        foreach (var tell in Findings.Tells.Search(others, outcomeColumn, options with { Shuffles = 0, TriesGames = false }).Tells)
        {
            var rows = TellCondition.RowsOf(tell.Conditions, left).Where(row => outcome.Codes[row] > 0).ToArray();
            if (rows.Length > 0)
            {
                yield return (tell, rows.Length, rows.Count(row => outcome[row] == tell.Outcome));
            }
        }
    }
}
