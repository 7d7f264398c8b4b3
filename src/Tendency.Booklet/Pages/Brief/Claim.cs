using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;

namespace Tendency.Booklet.Pages.Brief;

/// <summary>A sentence that could open the booklet, with what carries it.</summary>
/// <param name="Topic">Claims of one topic say nearly the same: back, down, formation.</param>
/// <param name="Anchor">The page that shows it.</param>
/// <param name="Sentence">"With the back weak, they run."</param>
/// <param name="Share">The count, against <paramref name="LineName"/>.</param>
/// <param name="Unit">What was counted: "plays", "runs with the back offset".</param>
/// <param name="LineName">What the line is: "team run rate".</param>
/// <param name="Plays">The plays counted in the share.</param>
/// <param name="Column">Column of the outcome: call, run_to.</param>
/// <param name="Value">The outcome: run, away.</param>
internal sealed record Claim(string Topic, string Anchor, string Sentence, Share Share, string Unit, string LineName, PlayLog Plays, string Column, string Value)
{
    /// <summary>In how many games the share lay over its line; empty with one game.</summary>
    public string Games(Study study)
    {
        var games = study.ByGame(Plays, Column, Value).Where(game => game.Plays > 0).ToArray();
        var same = games.Count(game => game.Value > Share.Baseline);
        return games.Length < 2 ? "" : $"So in {(same == games.Length ? $"all {Words.Number(games.Length)}" : $"{same} of {games.Length}")} games. ";
    }
}
