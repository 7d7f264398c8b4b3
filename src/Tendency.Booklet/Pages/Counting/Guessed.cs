using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Inference.Intervals;
using Tendency.Inference.Scores;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>The plays whose calls were guessed, with how often right.</summary>
internal sealed class Guessed
{
    // A column of ours: whether the call was guessed right from all they show.
    private const string Right = "guessed_right";

    // And one for whether what the calibration is about came.
    private const string Came = "came_as_said";

    private readonly Study _study;
    private readonly PlayLog _plays;
    private readonly double[] _said;

    /// <param name="study">Of all plays.</param>
    /// <param name="guess">With at least one play guessed.</param>
    public Guessed(Study study, GuessReport guess)
    {
        Report = guess;
        _plays = study.Plays.Take([.. guess.Plays.Select(play => play.Row)])
            .With(
                CategoryColumn.FromWords(Right, guess.Plays.Select(play => play.IsRight ? "yes" : "no")),
                CategoryColumn.FromWords(Came, guess.Plays.Select(play => play.Outcome == About(guess, play) ? "yes" : "no")));
        _said = [.. guess.Plays.Select(play => play.Forecast[About(guess, play)])];
        _study = study with { Ranges = new LikelyRanges(_plays, study.Level) };
        DownAndDistance = By(guess.Rows[1], null);
        All = By(guess.Rows[^1], DownAndDistance.Value);
        Always = _study.Of(_plays, guess.OutcomeColumn, guess.Commonest.Outcome, DownAndDistance.Value);
    }

    public GuessReport Report { get; }

    /// <summary>Right by saying the commoner call every time, against down and distance.</summary>
    public Share Always { get; }

    /// <summary>Right from down and distance alone: what the others are read against.</summary>
    public Share DownAndDistance { get; }

    /// <summary>Right from all they show, against down and distance.</summary>
    public Share All { get; }

    // Plays of a game are taken to be as alike under every model as under the one that sees all.
    private Share By(GuessRow model, double? line) => _study.Of(new Tally((int)Math.Round(model.Accuracy * model.Plays), model.Plays), _plays, Right, "yes", line);

    /// <summary>Range of how often it came where so much was said.</summary>
    public Interval Seen(CalibrationBin bin) =>
        _study.Ranges.Of(_plays.Where(row => _said[row] >= bin.From && (_said[row] < bin.To || bin.To >= 1)), Came, "yes");

    // Of two outcomes the first, of more the one we would have called.
    private static int About(GuessReport guess, GuessedPlay play) => guess.Outcomes.Count == 2 ? 0 : play.Guess;

    /// <summary>Right where a dimension holds a value, against all plays.</summary>
    public Share Where(Readability value) => _study.Of(_plays.Where(value.Dimension, value.Value), Right, "yes", All.Value);
}
