namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Repeats the search without one game after the other.</summary>
internal static class HeldOut
{
    /// <summary>With more games than this, several are left out at a time, so that the work stays bounded.</summary>
    private const int MostFolds = 20;

    /// <returns>For each tell and game: whether the other games alone would have listed it.</returns>
    public static bool[][] Games(SearchGround ground, IReadOnlyList<Candidate> tells, TellOptions options)
    {
        var games = ground.GameNames.Count;
        var found = tells.Select(_ => new bool[games]).ToArray();
        if (tells.Count == 0 || games < 2 || !options.TriesGames)
        {
            return found;
        }

        var folds = Math.Min(games, MostFolds);
        for (var f = 0; f < folds; f++)
        {
            var fold = f;
            var keys = PairSearch.Run(ground, options, out _, game => game % folds == fold)
                .Select(c => (c.Key, c.Z > 0))
                .ToHashSet();
            for (var t = 0; t < tells.Count; t++)
            {
                var listed = keys.Contains((tells[t].Key, tells[t].Z > 0));
                for (var game = fold; game < games; game += folds)
                {
                    found[t][game] = listed;
                }
            }
        }

        return found;
    }
}
