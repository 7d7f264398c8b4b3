using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Intervals;
using Tendency.Inference.Scores;
using Tendency.Inference.Shrinkage;

namespace Tendency.Breakdown.Findings;

/// <summary>How well calls can be guessed, on games the guesses were not learned from.</summary>
/// <param name="OutcomeColumn">What was guessed.</param>
/// <param name="Outcomes">Its values; forecasts are in this order.</param>
/// <param name="Rows">One a model: base rate, down and distance, all. Empty when there was nothing to score.</param>
/// <param name="Plays">Every scored play with the forecast of the model <c>all</c>.</param>
/// <param name="Calibration">What was said against what happened: of a two-way outcome the first value, of more the one called.</param>
/// <param name="WhyNot">Why nothing was scored; empty when something was.</param>
public sealed record GuessReport(
    string OutcomeColumn,
    IReadOnlyList<string> Outcomes,
    IReadOnlyList<GuessRow> Rows,
    IReadOnlyList<GuessedPlay> Plays,
    IReadOnlyList<CalibrationBin> Calibration,
    string WhyNot)
{
    /// <summary>What <see cref="Calibration"/> is about.</summary>
    public string Calibrated => Outcomes.Count == 2 ? Outcomes[0] : "our call";

    /// <summary>Plays of neither outcome, too few to be a third one; they are not guessed.</summary>
    public int Undecided { get; init; }

    /// <summary>What a guess starts from, in words; empty where it starts from nothing.</summary>
    public string Start => OutcomeColumn == ColumnNames.Call
        ? "Guesses that see everything start from what offenses usually call (one professional season's counts); all else starts from nothing."
        : "";

    /// <summary>The outcome that came most often among the plays guessed, and how often; the one listed first among equals. There must be plays.</summary>
    public (string Outcome, int Count) Commonest
    {
        get
        {
            var most = Plays.CountBy(play => play.Outcome).OrderByDescending(outcome => outcome.Value).ThenBy(outcome => outcome.Key).First();
            return (Outcomes[most.Key], most.Value);
        }
    }

    /// <summary>Part of the doubt about a call that so many bits take away, against the base rate; never below 0.</summary>
    public double DoubtGone(double bitsSaved) => Rows.Count == 0 || Rows[0].LogLoss == 0 ? 0 : Math.Max(0, bitsSaved * Math.Log(2) / Rows[0].LogLoss);

    // Eight plays say little of how readable a situation is: this many plays' worth of the overall figure is added before ranking.
    private const double UsualPlays = BackOff.UsualStrength;

    /// <summary>How readable each value of a dimension is, most bits to be expected first.</summary>
    /// <param name="plays">The log that was guessed.</param>
    /// <param name="minPlays">Values with fewer scored plays are left out.</param>
    public IReadOnlyList<Readability> By(PlayLog plays, string dimension, int minPlays = 8)
    {
        var column = plays.Dimension(dimension);
        var overall = Plays.Count == 0 ? 0 : Plays.Average(p => p.BitsSaved);
        return [.. Plays
            .Where(p => column.Codes[p.Row] > 0)
            .GroupBy(p => column.Codes[p.Row])
            .Where(g => g.Count() >= minPlays)
            .Select(g => new Readability(
                dimension,
                column.Levels[g.Key],
                g.Count(),
                g.Count(p => p.IsRight),
                g.Average(p => p.BitsSaved),
                (g.Sum(p => p.BitsSaved) + (UsualPlays * overall)) / (g.Count() + UsualPlays))
            { Rows = [.. g.Select(p => p.Row)] })
            .OrderByDescending(r => r.BitsExpected)
            .ThenBy(r => r.Value, StringComparer.Ordinal)];
    }

    /// <summary>
    /// Where calls are guessed right more often than overall, most bits to be expected first. Of two names for the same plays (empty, no back) the first.
    /// </summary>
    /// <param name="plays">The log that was guessed.</param>
    /// <param name="dimensions">Those not charted, and the one that was guessed, are passed over.</param>
    public IReadOnlyList<Readability> MostReadable(PlayLog plays, IEnumerable<string> dimensions)
    {
        var overall = Plays.Count == 0 ? 0 : Plays.Average(p => p.IsRight ? 1.0 : 0);
        return [.. dimensions
            .Where(dimension => plays.IsCharted(dimension) && dimension != OutcomeColumn)
            .SelectMany((dimension, order) => By(plays, dimension).Select(value => (Value: value, Order: order)))
            .Where(found => found.Value.BitsExpected > 0 && (double)found.Value.Right / found.Value.Plays > overall)
            .OrderByDescending(found => found.Value.BitsExpected)
            .ThenBy(found => found.Order)
            .Select(found => found.Value)
            .DistinctBy(value => value.SamePlays)];
    }
}

/// <summary>The scores of one model.</summary>
/// <param name="LogLoss">Mean -ln p(what was called), natural units a play.</param>
/// <param name="Brier">Mean (p - y)² for two outcomes, summed over outcomes for more.</param>
/// <param name="BitsSaved">(Log loss of the base rate - this one) / ln 2, a play.</param>
public sealed record GuessRow(string Model, int Plays, double Accuracy, double LogLoss, double Brier, double BitsSaved)
{
    /// <summary>Wilson's range of the accuracy, plays taken as independent.</summary>
    public Interval Likely { get; init; }

    /// <summary>Range of the mean of each game's bits saved a play: mean ± t sd / √games. Null under four games, and of the base rate.</summary>
    public Interval? BitsByGame { get; init; }
}

/// <summary>One play guessed from other games.</summary>
/// <param name="Row">Row in the play log.</param>
/// <param name="Outcome">What was called, an index into the outcomes.</param>
/// <param name="Guess">What the model would have called.</param>
/// <param name="Forecast">Its probability of each outcome.</param>
/// <param name="BaseLoss">-ln p of the base rate for what was called.</param>
public sealed record GuessedPlay(int Row, int Outcome, int Guess, IReadOnlyList<double> Forecast, double BaseLoss)
{
    public bool IsRight => Outcome == Guess;

    public double Loss => -Math.Log(Forecast[Outcome]);

    public double BitsSaved => (BaseLoss - Loss) / Math.Log(2);
}

/// <summary>How readable the plays of one situation are.</summary>
/// <param name="Right">Plays called right.</param>
/// <param name="BitsSaved">Against the base rate, a play.</param>
/// <param name="BitsExpected">The same, pulled towards that of all plays.</param>
public sealed record Readability(string Dimension, string Value, int Plays, int Right, double BitsSaved, double BitsExpected)
{
    /// <summary>The plays themselves, rows of the log that was guessed.</summary>
    public IReadOnlyList<int> Rows { get; init; } = [];

    /// <summary>Alike for two situations of the very same plays.</summary>
    public string SamePlays => string.Join(',', Rows);
}
