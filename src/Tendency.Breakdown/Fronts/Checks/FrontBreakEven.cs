using Tendency.Breakdown.Counts;
using Tendency.Inference.Games;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>At which share of a family of schemes two fronts allow the same, the rest of the mix in its present proportion.</summary>
/// <param name="ShareNow">The family's share of charted runs now.</param>
/// <param name="Low">Wilson interval of that share.</param>
/// <param name="BreakEvenShare">Null where one front is better at every share.</param>
/// <param name="BetterBelow">The better front below that share; the dominating one where there is none; empty where both are equal.</param>
public sealed record FrontBreakEven(
    string FrontA, string FrontB, string Family, double ShareNow, double Low, double High, double? BreakEvenShare, string BetterBelow, string BetterAbove)
{
    /// <summary>The family's share now with every game counted alike; <see cref="ShareNow"/> is weighted where some games count more.</summary>
    public double ShareAlike { get; init; }

    /// <summary>The share by the ratings alone, before any film; null where one front is better at every share.</summary>
    public double? ByRatings { get; init; }

    /// <summary>How sure the share is if what each front allows is right as it stands: their run mix alone is uncertain.</summary>
    public BreakEvenRange IfRatesHold { get; init; } = Nowhere;

    /// <summary>How sure it is when what each front allows is uncertain too, a rating being worth a few plays.</summary>
    public BreakEvenRange InAll { get; init; } = Nowhere;

    private static BreakEvenRange Nowhere { get; } = new(0, null);

    /// <summary>The front that is better at the present share; empty where both are equal.</summary>
    public string BetterNow => BreakEvenShare is { } share && ShareNow > share ? BetterAbove : BetterBelow;

    /// <summary>In a coach's words: when the answer turns, and where they are now.</summary>
    public string Sentence
    {
        get
        {
            var runs = RunFamily.All.First(f => f.Name == Family).Runs;
            var now = $"they are at {Percent.Of(ShareNow)} ({Percent.Range(new Interval(Low, High))})";
            var better = BetterNow;
            var other = better == FrontA ? FrontB : FrontA;
            return BreakEvenShare is not { } share
                ? better.Length == 0 ? $"{FrontWord.Of(FrontA)} and {FrontWord.Of(FrontB)} allow the same at any share of {runs}." : $"{FrontWord.Of(better)} allows less than {FrontWord.Of(other)} at any share of {runs}; {now}."
                : ShareNow <= share ? $"{FrontWord.Of(better)} allows less than {FrontWord.Of(other)} until {runs} pass {Percent.Of(share)} of runs; {now}."
                : $"{FrontWord.Of(better)} allows less than {FrontWord.Of(other)} as long as {runs} stay above {Percent.Of(share)} of runs; {now}.";
        }
    }

    /// <summary>Every pair of fronts in the matrix's order, against every family.</summary>
    /// <param name="book">Gives the schemes of a family they have not shown; each then counts the same.</param>
    /// <param name="expected">Their run success whatever the front.</param>
    public static IReadOnlyList<FrontBreakEven> Of(FrontMatrix matrix, FrontBook book, double expected, FrontOptions options)
    {
        var rows = new List<FrontBreakEven>();
        var cells = matrix.Mix.Cells;
        if (cells.Count == 0)
        {
            return rows;
        }

        var holds = RunFamily.All.Select(family => (IReadOnlyList<bool>)[.. cells.Select(c => family.Holds(c.Scheme))]).ToArray();
        var (mixAlone, all) = Draws(matrix, holds, options);
        for (var i = 0; i < RunFamily.All.Count; i++)
        {
            var family = RunFamily.All[i];
            var inside = Enumerable.Range(0, cells.Count).Where(c => holds[i][c]).ToArray();
            var outside = Enumerable.Range(0, cells.Count).Where(c => !holds[i][c]).ToArray();
            var count = inside.Sum(c => cells[c].EffectiveCount);
            var runs = matrix.Mix.EffectiveRuns;
            var now = OneProportion.Wilson(Math.Min(count, runs), runs, options.Level);
            var share = runs > 0 ? count / runs : 0;
            var plain = matrix.Mix.Runs > 0 ? inside.Sum(c => cells[c].Count) / matrix.Mix.Runs : 0;
            var unseen = matrix.Fronts.Select(f => Unseen(f, family, book, expected, options)).ToArray();
            var with = matrix.Fronts.Select((_, f) => matrix.Allowed(f, inside) ?? unseen[f]).ToArray();
            var without = matrix.Fronts.Select((_, f) => matrix.Allowed(f, outside) ?? expected).ToArray();
            var rated = matrix.Fronts.Select((_, f) => (With: matrix.Expected(f, inside) ?? unseen[f], Without: matrix.Expected(f, outside) ?? expected)).ToArray();
            for (var a = 0; a < matrix.Fronts.Count; a++)
            {
                for (var b = a + 1; b < matrix.Fronts.Count; b++)
                {
                    var turn = Turn(with[a], without[a], with[b], without[b]);
                    var (at, below, above) = Lead(matrix.Fronts[a].Name, matrix.Fronts[b].Name, turn);
                    var isDrawn = turn.Share is not null && inside.Length > 0 && outside.Length > 0;
                    rows.Add(new FrontBreakEven(matrix.Fronts[a].Name, matrix.Fronts[b].Name, family.Name, share, now.Low, now.High, at, below, above)
                    {
                        ShareAlike = plain,
                        ByRatings = Turn(rated[a].With, rated[a].Without, rated[b].With, rated[b].Without).Share,
                        IfRatesHold = isDrawn ? BreakEvenRange.Of(mixAlone[i], a, b, turn.FirstLeadsAbove, options.Level) : Nowhere,
                        InAll = isDrawn ? BreakEvenRange.Of(all[i], a, b, turn.FirstLeadsAbove, options.Level) : Nowhere,
                    });
                }
            }
        }

        return rows;
    }

    private static (IReadOnlyList<SplitValues> MixAlone, IReadOnlyList<SplitValues> All) Draws(
        FrontMatrix matrix, IReadOnlyList<IReadOnlyList<bool>> holds, FrontOptions options)
    {
        IReadOnlyList<SplitValues> Draw(bool ratesVary) =>
            SplitDraws.Simulate(matrix.Rates, matrix.Mix.Posterior.Weights, holds, ratesVary, options.CardDraws, options.Seed);
        return (Draw(false), Draw(true));
    }

    // Rounded first: two fronts with the same ratings must tie, whatever the order their cells were added in.
    private static BreakEven Turn(double withA, double withoutA, double withB, double withoutB) =>
        BreakEven.Of(Stops(withA), Stops(withoutA), Stops(withB), Stops(withoutB));

    private static (double? At, string Below, string Above) Lead(string a, string b, BreakEven turn) => turn.Better switch
    {
        Better.First => (null, a, a),
        Better.Second => (null, b, b),
        Better.Equal => (null, "", ""),
        _ => (turn.Share, turn.FirstLeadsAbove ? b : a, turn.FirstLeadsAbove ? a : b),
    };

    private static double Stops(double allowed) => Math.Round(1 - allowed, 12);

    private static double Unseen(Front front, RunFamily family, FrontBook book, double expected, FrontOptions options) =>
        book.Schemes.Where(s => family.Holds(s) && book.IsRated(s.Name))
            .SelectMany(s => new[] { RunTo.ToBack, RunTo.Away }.Select(side => FrontMatrix.Prior(expected, book.RatingOf(front.Name, s.Name, side), options)))
            .Average();
}
