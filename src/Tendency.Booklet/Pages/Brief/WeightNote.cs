using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;

namespace Tendency.Booklet.Pages.Brief;

/// <summary>What a brief says when some games count more: which, and how much.</summary>
internal static class WeightNote
{
    private const int MostNamed = 5;

    public static IEnumerable<Block> Of(Study study)
    {
        if (!study.Weights.IsOn || study.Games.Count == 0)
        {
            yield break;
        }

        var games = study.Games.OrderByDescending(study.Weights.Of).ToArray();
        var named = string.Join(", ", games.Take(MostNamed).Select(game => $"{Weighing.Weight(study.Weights.Of(game))} in {game}"));
        var more = games.Length > MostNamed ? $" and {games.Length - MostNamed} more" : "";

        // Two lines at most: the page named says what goes by which count.
        var front = study.Side == "offense" && study.Fronts is { Ranking.Ranks.Count: > 0 } ? ", the front by the weighted mix" : "";

        yield return new Paragraph(
            RichText.Strong(study.Weights.Why) + $" A play counts {named}{more}.{(study.Weights.Reasons.Count > 1 ? "" : $" Sentences go by plain counts{front}.")}"
            + (study.Anchors.Contains(Weighing.Anchor) ? " " + RichText.PageOf(Weighing.Anchor) + "." : RichText.Empty),
            TextStyle.Note);
    }
}
