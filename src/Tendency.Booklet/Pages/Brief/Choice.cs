using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Brief;

/// <summary>Which claims open the booklet: sure ones, frequent ones, and no two that say the same.</summary>
internal static class Choice
{
    public const int Most = 5;

    private const int MostOfATopic = 2;

    // Two claims on the same outcome whose plays overlap by more than this are one finding.
    private const double SamePlays = .5;

    /// <summary>
    /// At most five claims. Each passes the dots' test; those come first that pass it still when the search is paid for (Bonferroni over the places
    /// tried), then by the plays they move, small counts leaning on all plays.
    /// </summary>
    /// <param name="study">Gives the ranges.</param>
    /// <param name="claims">All that were tried and could be said.</param>
    /// <param name="tried">How many places were looked at.</param>
    public static IReadOnlyList<Claim> Of(Study study, IEnumerable<Claim> claims, int tried)
    {
        var strict = Strict(study, tried);
        var ranked = claims.Where(claim => claim.Share.Lean() == Lean.Above)
            .OrderByDescending(claim => IsSure(claim, strict)).ThenByDescending(claim => study.Moves(claim.Plays, claim.Column, claim.Value, claim.Share.Baseline));
        var chosen = new List<(Claim Claim, HashSet<(string, int?)> Keys)>();
        foreach (var claim in ranked)
        {
            var keys = Keys(claim.Plays);
            if (chosen.Count < Most
                && chosen.Count(other => other.Claim.Topic == claim.Topic) < MostOfATopic
                && !chosen.Exists(other => SaysTheSame(claim, keys, other.Claim, other.Keys)))
            {
                chosen.Add((claim, keys));
            }
        }

        return [.. chosen.Select(claim => claim.Claim)];
    }

    /// <summary>What the search owes its reader: how many places were looked at, which of the sentences that may be luck, what else was sure. Empty where five sentences stand for all of them.</summary>
    /// <param name="study">Gives the ranges.</param>
    /// <param name="chosen">In printing order.</param>
    /// <param name="claims">All that could be said.</param>
    /// <param name="tried">How many places were looked at.</param>
    /// <param name="places">What they are: "situations and directions".</param>
    public static string Note(Study study, IReadOnlyList<Claim> chosen, IEnumerable<Claim> claims, int tried, string places)
    {
        var strict = Strict(study, tried);
        var weak = chosen.Index().Where(claim => !IsSure(claim.Item, strict)).Select(claim => Blocks.Figures.Count(claim.Index + 1)).ToArray();
        var again = claims.Count(claim => claim.Share.Lean() == Lean.Above) - chosen.Count;
        string[] said =
        [
            weak.Length == 0 ? "" : $"{(weak.Length == 1 ? "sentence" : "sentences")} {Words.Join(weak)} could be luck",
            chosen.Count == Most ? "" : again == 0 ? "no other habit is sure" : $"{Words.Counted(again, "more lean is", "more leans are")} sure, on plays or subjects named above",
        ];
        return said.All(words => words.Length == 0) ? "" : $"{Blocks.Figures.Count(tried)} {places} were looked at; {string.Join("; ", said.Where(words => words.Length > 0))}.";
    }

    private static LikelyRanges Strict(Study study, int tried) => study.Ranges.At(1 - ((1 - study.Level) / Math.Max(1, tried)));

    private static bool IsSure(Claim claim, LikelyRanges strict) => strict.Of(claim.Plays, claim.Column, claim.Value).Low > claim.Share.Baseline;

    private static bool SaysTheSame(Claim one, HashSet<(string, int?)> keys, Claim other, HashSet<(string, int?)> otherKeys)
    {
        if (one.Column != other.Column || one.Value != other.Value)
        {
            return false;
        }

        var both = keys.Count(otherKeys.Contains);
        return both > SamePlays * Math.Min(keys.Count, otherKeys.Count);
    }

    private static HashSet<(string, int?)> Keys(PlayLog plays)
    {
        var games = plays.Category(ColumnNames.Game);
        var numbers = plays.Number(ColumnNames.Play);
        return [.. Enumerable.Range(0, plays.Rows).Select(row => (games[row], numbers[row]))];
    }
}
