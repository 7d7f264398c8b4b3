using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
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
        return new Page("guess", "How readable they are", Finding(study, guessed, guess))
        {
            Deck = "Every play was guessed from the other games only. Line: always guessing what the other games called more often. Doubt gone: how much less open the call is than to one who knows only how often they run.",
            Blocks =
            [
                new Heading("How many calls we would have had right", $"{Words.Figured(guess.Rows[^1].Plays, "play")} guessed as {Words.Join(guess.Outcomes, "or")}"),
                Models(guessed, guess),
                new Heading("Where they are most readable", "most doubt gone first, few plays leaning on all; at least eight plays"),
                Where(study, guessed, guess),
                .. Calibration(guessed, guess),
            ],
        };
    }

    private static string Finding(Study study, Guessed guessed, GuessReport guess)
    {
        var always = guess.Rows[0];
        var all = guessed.By(guess.Rows[^1], always.Accuracy);
        return all.Lean() == Lean.Above
            ? Headline.Of($"They can be read: {Figures.Percent(all)} of calls guessed right, {Figures.Percent(always.Accuracy)} without looking.", Most(study, guess))
            : $"They are hard to read: {Figures.Percent(all)} of calls guessed right, {Figures.Percent(always.Accuracy)} without looking.";
    }

    private static string Most(Study study, GuessReport guess) =>
        s_kinds.SelectMany(kind => guess.By(study.Plays, kind.Column)).Where(value => value.BitsExpected > 0).MaxBy(value => value.BitsExpected) is { } most
            ? $"Most of all: {SituationWords.Of(most.Dimension, most.Value)}." : "";

    private static Table Models(Guessed guessed, GuessReport guess)
    {
        var line = guess.Rows[0].Accuracy;
        return new Table(
            [
                new Column("Guessing from", 0, 140),
                new Column("Called right", 160, 150) { Axis = StripAxis.Shares($"without looking {Figures.Percent(line)}", line) },
                new Column("Share, likely", 322, 130),
                new Column("Doubt gone", 460, 56, Align.Right),
            ],
            [.. guess.Rows.Select(row =>
            {
                var right = guessed.By(row, line);
                return new TableRow(Cells.Name(Name(row.Model)), Cells.Strip(right), new ShareCell(right) { Form = ShareForm.OneLine }, Cells.Figure(Figures.Percent(guess.DoubtGone(row.BitsSaved))));
            })])
        { Caption = "Guesses by model" };
    }

    private static string Name(string model) => model switch
    {
        "base rate" => "Nothing: their usual call",
        "down and distance" => "Down and distance",
        _ => "All they show",
    };

    private static Table Where(Study study, Guessed guessed, GuessReport guess)
    {
        var overall = guess.Rows[^1].Accuracy;
        var rows = new List<TableRow>();
        foreach (var (name, column) in s_kinds)
        {
            var values = guess.By(study.Plays, column).Where(value => value.BitsExpected > 0).Take(MostRows).ToArray();
            if (values.Length > 0)
            {
                rows.Add(TableRow.GroupHead(name));
                rows.AddRange(values.Select(value => RowOf(guessed, guess, value, overall)));
            }
        }

        return new Table(
            [
                new Column("Situation", 0, 140),
                new Column("Called right", 160, 150) { Axis = StripAxis.Shares($"overall {Figures.Percent(overall)}", overall) },
                new Column("Share, likely", 322, 130),
                new Column("Doubt gone", 460, 56, Align.Right),
            ],
            rows)
        { Caption = "Readability by situation" };
    }

    private static TableRow RowOf(Guessed guessed, GuessReport guess, Readability value, double overall)
    {
        var right = guessed.Where(value, overall);
        var words = SituationWords.Of(value.Dimension, value.Value);
        return new TableRow(Cells.Name(Words.Title(words)), Cells.Strip(right), new ShareCell(right) { Form = ShareForm.OneLine }, Cells.Figure(Figures.Percent(guess.DoubtGone(value.BitsExpected))));
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
