using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>The plays a search runs over, as plain codes: game, outcome and dimensions of every play whose outcome is charted.</summary>
internal sealed class SearchGround
{
    private const double NearlyAll = 0.95;

    private SearchGround(int[] rows, IReadOnlyList<string> gameNames, int[] game, IReadOnlyList<string> outcomes, int[] outcome, IReadOnlyList<SearchDimension> dimensions)
    {
        Rows = rows;
        GameNames = gameNames;
        Game = game;
        Outcomes = outcomes;
        Outcome = outcome;
        Dimensions = dimensions;
        GamePlays = new int[gameNames.Count];
        Hits = [.. outcomes.Select(_ => new int[gameNames.Count])];
        for (var i = 0; i < game.Length; i++)
        {
            GamePlays[game[i]]++;
            if (outcome[i] >= 0)
            {
                Hits[outcome[i]][game[i]]++;
            }
        }
    }

    /// <summary>Row in the play log of each play searched.</summary>
    public int[] Rows { get; }

    public IReadOnlyList<string> GameNames { get; }

    /// <summary>Game of each play, an index into <see cref="GameNames"/>.</summary>
    public int[] Game { get; }

    /// <summary>Values that may be a tell's outcome.</summary>
    public IReadOnlyList<string> Outcomes { get; }

    /// <summary>Outcome of each play, an index into <see cref="Outcomes"/>; -1 for a value too rare to be one.</summary>
    public int[] Outcome { get; }

    public IReadOnlyList<SearchDimension> Dimensions { get; }

    /// <summary>Plays of each game.</summary>
    public int[] GamePlays { get; }

    /// <summary>Plays of each game with an outcome: first index the outcome.</summary>
    public int[][] Hits { get; }

    /// <summary>With two outcomes in all, more of one is less of the other: only the first is tested.</summary>
    public bool IsTwoWay { get; private init; }

    /// <summary>
    /// Whether an outcome is one of two that make up nearly all plays (runs, passes and a few undecided options): more of it is less of the other.
    /// </summary>
    public bool IsOneOfTwo(int outcome)
    {
        var hits = Hits.Select(h => h.Sum()).ToArray();
        var two = hits.OrderDescending().Take(2).ToArray();
        return IsTwoWay || (two.Sum() >= NearlyAll * Rows.Length && hits[outcome] >= two[^1]);
    }

    public int TestedOutcomes => IsTwoWay ? 1 : Outcomes.Count;

    public static SearchGround From(PlayLog plays, string outcomeColumn, TellOptions options)
    {
        var column = plays.Dimension(outcomeColumn);
        var rows = Enumerable.Range(0, plays.Rows).Where(row => column.Codes[row] > 0).ToArray();
        var games = SearchDimension.From(plays.Dimension(ColumnNames.Game), rows, 1);
        var values = SearchDimension.From(column, rows, 1);
        var isTwoWay = values.Values.Count == 2;
        var outcomes = isTwoWay ? values : SearchDimension.From(column, rows, options.MinPlays);
        return new SearchGround(rows, games.Values, games.Codes, outcomes.Values, outcomes.Codes, Choose(plays, rows, outcomeColumn, options))
        {
            IsTwoWay = isTwoWay,
        };
    }

    private static List<SearchDimension> Choose(PlayLog plays, int[] rows, string outcomeColumn, TellOptions options)
    {
        var chosen = new List<SearchDimension>();
        foreach (var name in (options.Dimensions.Count > 0 ? options.Dimensions : TellDimensions.For(plays)).Distinct())
        {
            if (!plays.IsCharted(name) || TellDimensions.AreNested(name, outcomeColumn))
            {
                continue;
            }

            var dimension = SearchDimension.From(plays.Dimension(name), rows, options.MinPlays);
            if (!dimension.IsConstant && !chosen.Exists(dimension.SplitsLike))
            {
                chosen.Add(dimension);
            }
        }

        return chosen;
    }
}
