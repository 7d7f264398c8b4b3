using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What the ranges make of plays that come in games, in few words.</summary>
internal static class EffectiveCounts
{
    private static readonly (string Name, string Column, string? Value)[] s_ofOffense =
    [
        ("run or pass", ColumnNames.Call, "run"), ("gained enough", ColumnNames.Success, "yes"), ("the run’s side", ColumnNames.RunTo, "away"), ("the slide", ColumnNames.SlideTo, "away"),
    ];

    private static readonly (string Name, string Column, string? Value)[] s_ofDefense =
    [
        ("five or more rush", OwnColumns.ExtraRush, "yes"), ("fronts", ColumnNames.Front, null), ("coverages", ColumnNames.Coverage, null), ("gained enough", ColumnNames.Success, "yes"),
    ];

    /// <summary>For the brief, the first questions only: "Ranges count that plays come in games: as run or pass 192 plays count like 85."</summary>
    public static string InShort(Study study)
    {
        var counted = Counted(study).Take(2).ToArray();
        return study.Games.Count < 2 || counted.Length == 0 ? "" : counted[0] is { Like: var like, Plays: var plays } && like < plays
            ? $"Ranges count that plays come in games: as {counted[0].Name} {Figures.Count(plays)} plays count like {Figures.Count(like)}."
            : $"Ranges count that plays come in games: as {counted[0].Name} {Figures.Count(counted[0].Plays)} plays count in full"
                + (counted.Length == 1 || counted[1].Like == counted[1].Plays ? "." : $", as {counted[1].Name} {Figures.Count(counted[1].Plays)} like {Figures.Count(counted[1].Like)}.");
    }

    /// <summary>"Ranges count that plays come in games: gained enough, 319 plays like 212; run or pass in full."</summary>
    public static string Of(Study study)
    {
        if (study.Games.Count < 2)
        {
            return "From one game alone they show no difference between games.";
        }

        var counted = Counted(study);
        var fewer = counted.Where(question => question.Like < question.Plays).Select((question, i) => $"{question.Name}, {Figures.Count(question.Plays)}{(i == 0 ? " plays" : "")} like {Figures.Count(question.Like)}");
        var full = counted.Where(question => question.Like >= question.Plays).Select(question => question.Name).ToArray();
        var said = fewer.Concat(full.Length == 0 ? [] : [$"{Words.Join(full)} in full"]);
        return $"Ranges count that plays come in games: {string.Join("; ", said)}.";
    }

    private static IReadOnlyList<(string Name, int Plays, int Like)> Counted(Study study)
    {
        var plays = study.Ranges.Plays;
        return
        [
            .. (study.Side == "defense" ? s_ofDefense : s_ofOffense)
                .Select(question => (question.Name, Plays: plays.Dimension(question.Column).ChartedCount, Like: (int)Math.Round(study.Ranges.EffectivePlays(plays, question.Column, question.Value))))
                .Where(question => question.Plays >= Share.FewestPlays),
        ];
    }
}
