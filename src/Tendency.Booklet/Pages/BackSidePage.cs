using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What does the back's spot tell: run or pass, which way the run goes, which way the line slides?</summary>
internal static class BackSidePage
{
    public static Page? Compose(Study study)
    {
        var plays = study.Plays;
        var charted = plays.Where(ColumnNames.BackSide, "strong", "weak", "middle", "none");
        var spots = BackSpots.Of(charted).ToArray();
        var runs = plays.Where(ColumnNames.RunTo, "to back", "away");
        var slides = plays.Where(ColumnNames.SlideTo, "to back", "away");
        return new Page("back-side", "Back's side", Headline.Of(
            CallFinding.Of(study, spots, ""), Ways(study, runs, slides), Fallback(study, charted)))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                new Heading("Run or pass", "by where the back stands before the snap"),
                CallTable.Of(study, "Back", spots.Prepend(Situation.Total(charted, "All charted"))),
                .. Note(study, charted),
                new SideBySide([new Side(0, RunDirection(study, runs)), new Side(0, SlideDirection(study, slides))]),
            ],
        };
    }

    /// <summary>"Runs go away from the back." when sure, empty when it could be even.</summary>
    internal static string Way(Study study, PlayLog plays, string column, string subject) => study.Of(plays, column, "away", .5).Lean() switch
    {
        Lean.Above => $"{subject} away from the back.",
        Lean.Below => $"{subject} to the back's side.",
        _ => "",
    };

    private static string Ways(Study study, PlayLog runs, PlayLog slides)
    {
        var run = Way(study, runs, ColumnNames.RunTo, "Runs go");
        var slide = Way(study, slides, ColumnNames.SlideTo, "Slides go");
        return run.Length > 0 && slide.Length > 0 && run[5..] == slide[7..] ? $"Runs and slides {run[5..]}" : Words.Sentences(run, slide);
    }

    private static string Fallback(Study study, PlayLog charted)
    {
        var spots = BackSpots.Of(charted).Where(spot => CallVerdict.Of(study, spot.Plays).Doing is not null);
        return spots.Any() ? "" : "The back's spot does not give run or pass away.";
    }

    private static IEnumerable<Block> Note(Study study, PlayLog charted)
    {
        var unseen = study.Plays.Rows - charted.Rows;
        if (unseen > 0)
        {
            yield return Paragraph.Note($"Back's side not charted on {Words.Figured(unseen, "play")}: left out here, kept in the team rate.");
        }
    }

    private static List<Block> RunDirection(Study study, PlayLog runs)
    {
        var blocks = new List<Block> { new Heading("Runs away from him", "back offset") };
        if (runs.Rows == 0)
        {
            blocks.Add(Missing(study, "Run direction", ColumnNames.RunSide));
            return blocks;
        }

        blocks.Add(DirectionTable.Of(study, "Runs", "Away", ColumnNames.RunTo, "away",
            Rows(runs).Concat(DirectionTable.By(runs, ColumnNames.RunScheme, 6)), 252));
        return blocks;
    }

    private static List<Block> SlideDirection(Study study, PlayLog slides)
    {
        var blocks = new List<Block> { new Heading("Slides away from him", "back offset") };
        if (slides.Rows == 0)
        {
            blocks.Add(Missing(study, "The slide", ColumnNames.SlideSide));
            return blocks;
        }

        var downs = new[] { ("1", "1st down"), ("2", "2nd down"), ("3", "3rd down") }
            .Select(down => new Situation(down.Item2, "", slides.Where(ColumnNames.Down, down.Item1)));
        blocks.Add(DirectionTable.Of(study, "Slides", "Away", ColumnNames.SlideTo, "away",
            Rows(slides).Concat(downs).Concat(DirectionTable.By(slides, ColumnNames.Protection, 3)), 252));
        return blocks;
    }

    private static IEnumerable<Situation> Rows(PlayLog plays) =>
    [
        Situation.Total(plays, "All offset"),
        new Situation("Back weak", "", plays.Where(ColumnNames.BackSide, "weak")),
        new Situation("Back strong", "", plays.Where(ColumnNames.BackSide, "strong")),
    ];

    private static EmptyState Missing(Study study, string what, string column) => new(
        RichText.Strong($"{what} was not charted with an offset back.") + $" It needs back_side and {column}; {column} is filled on {Figures.CountOf(study.Plays.Category(column).ChartedCount, study.Plays.Rows)}.");
}
