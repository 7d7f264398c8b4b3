using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>A line of the front card: a situation a coordinator calls in.</summary>
public sealed record CardSituation(string Name, Func<int, bool> Holds)
{
    /// <summary>Plays of the whole mix a situation leans on: the usual weight for thin cells.</summary>
    public const double PriorPlays = 8;

    private const int MostFormations = 4;
    private const int FewestPlays = 8;

    /// <summary>Early downs, short yardage, red zone, their main formations, the back strong and weak; those with enough plays.</summary>
    public static IReadOnlyList<CardSituation> Of(PlayLog log)
    {
        var downs = log.Category(ColumnNames.Down);
        var distances = log.Number(ColumnNames.Distance);
        var toGoal = log.Number(ColumnNames.YardsToGoal);
        var backs = log.Category(ColumnNames.BackSide);
        var formations = log.Category(ColumnNames.Formation);
        var main = Enumerable.Range(0, log.Rows).Select(r => formations[r]).Where(f => f.Length > 0)
            .GroupBy(f => f, StringComparer.Ordinal).Where(g => g.Count() >= FewestPlays).OrderByDescending(g => g.Count()).Take(MostFormations).Select(g => g.Key);
        CardSituation[] all =
        [
            new("all plays", _ => true),
            new("early downs", r => downs[r] is "1" or "2"),
            new("third and fourth, 1–2 to go", r => downs[r] is "3" or "4" && distances[r] <= 2),
            new("third and fourth, 3–6 to go", r => downs[r] is "3" or "4" && distances[r] is >= 3 and <= 6),
            new("third and fourth, 7 and more", r => downs[r] is "3" or "4" && distances[r] >= 7),
            new("red zone", r => toGoal[r] <= 20),
            new("back strong", r => backs[r] == "strong"),
            new("back weak", r => backs[r] == "weak"),
            .. main.Select(f => new CardSituation(f, r => formations[r] == f)),
        ];
        return [.. all.Where(s => Enumerable.Range(0, log.Rows).Count(s.Holds) >= FewestPlays)];
    }
}
