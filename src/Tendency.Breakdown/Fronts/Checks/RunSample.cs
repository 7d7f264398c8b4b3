using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>The runs of a play log as the front check sees them, and how many it could not use.</summary>
/// <param name="Runs">Runs, and options to pass, whose scheme is charted and rated; one whose side against the back is not known counts half to
/// each side of the mix and in no cell of the film.</param>
/// <param name="RunCalls">All of them, the scheme charted or not.</param>
/// <param name="Passes">Plays called pass.</param>
/// <param name="Base">Success of charted runs.</param>
public sealed record RunSample(IReadOnlyList<ChartedRun> Runs, int RunCalls, int Passes, BaseSuccess Base, BaseSuccess PassBase)
{
    /// <summary>Runs whose scheme is not charted or not one that can be rated.</summary>
    public int WithoutScheme => RunCalls - Runs.Count;

    /// <param name="log">Studied plays with their derived dimensions.</param>
    public static RunSample Of(PlayLog log, FrontBook book)
    {
        var calls = log.Category(ColumnNames.Call);
        var called = log.Category(ColumnNames.Called);
        var success = log.Category(ColumnNames.Success);
        var gains = log.Number(ColumnNames.Gain);
        var fronts = log.Category(ColumnNames.Front);
        var reads = log.Category(ColumnNames.Read);
        var sides = log.Category(ColumnNames.RunTo);
        var words = log.Category(ColumnNames.RunScheme);
        var games = log.Category(ColumnNames.Game);
        var schemes = words.Levels.Select(w => Rated(book, w)).ToArray();
        var frontNames = fronts.Levels.Select(w => book.Front(w)?.Name ?? w).ToArray();
        var surfaces = new SurfaceReader(log);
        var runs = new List<ChartedRun>();
        int runCalls = 0, passes = 0, judged = 0, won = 0, passJudged = 0, passWon = 0;
        for (var row = 0; row < log.Rows; row++)
        {
            var isRush = calls[row] == "run";
            bool? succeeded = success[row] switch { "yes" => true, "no" => false, _ => null };
            if (calls[row] == "pass")
            {
                passes++;
                passJudged += succeeded is null ? 0 : 1;
                passWon += succeeded == true ? 1 : 0;
            }

            if (!isRush && called[row] != "rpo")
            {
                continue;
            }

            runCalls++;
            if (isRush)
            {
                judged += succeeded is null ? 0 : 1;
                won += succeeded == true ? 1 : 0;
            }

            if (schemes[words.Codes[row]] is { } scheme)
            {
                runs.Add(new ChartedRun(
                    row,
                    scheme,
                    RunToWords.Parse(sides[row]),
                    frontNames[fronts.Codes[row]],
                    succeeded,
                    gains[row],
                    surfaces.At(row),
                    called[row] == "rpo" ? Tag.Rpo : Tags.Parse(reads[row]),
                    isRush)
                { Game = games[row] });
            }
        }

        return new RunSample(runs, runCalls, passes, new BaseSuccess(judged, won), new BaseSuccess(passJudged, passWon));
    }

    private static RunScheme? Rated(FrontBook book, string word) =>
        book.Scheme(word) is { } scheme && book.IsRated(scheme.Name) ? scheme : null;
}

/// <summary>How often the offense's plays of a kind succeed, whatever the front.</summary>
/// <param name="Plays">Plays with a result to judge.</param>
public readonly record struct BaseSuccess(int Plays, int Successes)
{
    /// <summary>Below this many plays the charted share says too little and the usual one is taken.</summary>
    public const int FewestPlays = 20;

    /// <summary>Success of an average offense (40, 60 and 100 % of the distance by down), taken for want of film.</summary>
    public const double Usual = 0.45;

    public bool IsCharted => Plays >= FewestPlays;

    public double Share => IsCharted ? (double)Successes / Plays : Usual;
}
