using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;

namespace Tendency.Booklet.Pages.Brief;

/// <summary>What a brief says when some games count more: which, and how much.</summary>
internal static class WeightNote
{
    private const int MostNamed = 3;

    public static IEnumerable<Block> Of(Study study)
    {
        if (!study.Weights.IsOn || study.Games.Count == 0)
        {
            yield break;
        }

        // One line: the page named has every game, and says what goes by which count.
        var games = study.Games.OrderByDescending(study.Weights.Of).ToArray();
        string Counts(string game) => $"{Weighing.Weight(study.Weights.Of(game))} in {game}";
        var counts = games.Length <= MostNamed ? Words.Join(games.Select(Counts)) : $"from {Counts(games[0])} to {Counts(games[^1])}";
        yield return new Paragraph(
            RichText.Strong(study.Weights.Which) + $" A play counts {counts}."
            + (study.Anchors.Contains(Weighing.Anchor) ? " " + RichText.PageOf(Weighing.Anchor) + "." : RichText.Empty),
            TextStyle.Note);
    }
}
