using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Games whose snaps come from more than one file: halves charted apart, or the same game twice.</summary>
internal static class GamesInSeveralFiles
{
    public static void Report(PlayLog plays, ICollection<Problem> problems)
    {
        var games = plays.Category(ColumnNames.Game);
        var files = plays.Category(ColumnNames.SourceFile);
        var seen = new Dictionary<(ushort Game, ushort File), int>();
        for (var row = 0; row < plays.Rows; row++)
        {
            var key = (games.Codes[row], files.Codes[row]);
            seen[key] = seen.GetValueOrDefault(key) + 1;
        }

        foreach (var game in seen.GroupBy(pair => pair.Key.Game).Where(group => group.Count() > 1))
        {
            var parts = game.Select(pair => $"{files.Levels[pair.Key.File]} ({pair.Value} snaps)").ToArray();
            problems.Add(new Problem(
                ReadingRules.GameInSeveralFiles,
                new Place(files.Levels[game.First().Key.File], 0, ColumnNames.Game),
                CellText.Shown(games.Levels[game.Key]),
                $"'{CellText.Shown(games.Levels[game.Key])}' stands in {parts.Length} files: {string.Join(", ", parts.Take(6))}."));
        }
    }
}
