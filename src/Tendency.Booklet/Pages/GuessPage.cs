using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Inference.Scores;

namespace Tendency.Booklet.Pages;

/// <summary>How well can their calls be guessed before the snap, and where best?</summary>
internal static class GuessPage
{
    private const int MostRows = 2;

    private static readonly (string Name, string Column)[] s_kinds =
    [
        ("By down and distance", ColumnNames.DownDistance), ("By formation", ColumnNames.Formation), ("By the back's side", ColumnNames.BackSide), ("By personnel", ColumnNames.Personnel),
    ];

    public static Page? Compose(Study study)
    {
        if (study.Guess is not { Rows.Count: > 0 } guess)
        {
            return null;
        }

        var guessed = new Guessed(study, guess);
        return new Page("guess", "How readable they are", GuessFinding.Of(study, guessed, s_kinds.Select(kind => kind.Column), ours: false))
        {
            Deck = Words.Sentences("Every play was guessed from the other games only.", guess.Start, "Doubt gone: how much less open the call is than to one who knows only how often they run."),
            Blocks =
            [
                new Heading("How many calls we would have had right", $"{Words.Figured(guess.Plays.Count, "play")} guessed as {Words.Join(guess.Outcomes, "or")}; line: down and distance alone"),
                GuessTables.Models(guessed, "All they show"),
                new Heading("Where they are most readable", "most doubt gone first, few plays leaning on all; at least eight plays"),
                GuessTables.Where(study, guessed, s_kinds, MostRows),
                .. Calibration(guessed, guess),
            ],
        };
    }

    /// <summary>When we say 70%, does it happen 70% of the time?</summary>
    private static IEnumerable<Block> Calibration(Guessed guessed, GuessReport guess)
    {
        var bins = guess.Calibration.Where(bin => bin.Count >= Share.FewestPlays && bin.MeanForecast is not null)
            .Select(bin => bin with { Likely = guessed.Seen(bin) }).ToArray();
        if (bins.Length < 2)
        {
            yield break;
        }

        yield return new Heading("Does it happen as often as we say?", $"dots: said and seen share of {guess.Calibrated}; on the line the guesses keep their word");
        yield return new Plot(
            new PlotAxis(0, 1, [new Tick(0, "0"), new Tick(.5, "50"), new Tick(1, "100%")], $"said: chance of {guess.Calibrated}"),
            new PlotAxis(0, 1, [new Tick(0, "0"), new Tick(.5, "50"), new Tick(1, "100%")], "seen"),
            150,
            $"said and seen: {string.Join(", ", bins.Select(Said))}")
        {
            Lines = [new PlotLine([0, 1], [0, 1], "as said")],
            Dots = [.. bins.Select(bin => new PlotDot(bin.MeanForecast!.Value, (double)bin.Hits / bin.Count, bin.Likely.Low, bin.Likely.High) { Solid = !bin.Likely.Contains(bin.MeanForecast.Value) })],
        };
    }

    private static string Said(CalibrationBin bin) => $"{Figures.Percent(bin.MeanForecast!.Value)} said, {bin.Hits} of {bin.Count} seen";
}
