using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>How are the pages read, what was charted, and what is not in here?</summary>
internal static class ReadingPage
{
    private const int Columns = 3;

    public static Page? Compose(Study study) => new("reading", "How to read", "How to read the pages, and what they rest on.")
    {
        Blocks =
        [
            new Heading("How to read"),
            Marks(study),
            new Heading("What was charted", "Cells filled, of the plays a column applies to. Names as in the chart's header."),
            Charted(study),
            new SideBySide([new Side(0, [.. LeftOut(study)]), new Side(0, [.. PagesLeftOut(study)])]),
            new Heading("Words we use"),
            .. Glossary(study),
        ],
    };

    // Invented counts, each showing one mark.
    private static Table Marks(Study study)
    {
        const double Line = .52;
        Share Example(int count, int plays, double? line) => study.InGame(new Tally(count, plays), line);
        var examples = new (string Name, string Means, Share Share)[]
        {
            ("Solid dot, heavy bar, bold percent", "Differs from the line: the likely range leaves it out, before rounding.", Example(44, 62, Line)),
            ("Open dot, thin bar", "Could be the same as the line.", Example(40, 71, Line)),
            ("Hatched", "Under 5 plays: the count alone, no percent, no range.", Example(2, 3, Line)),
            ("Upright tick", "No line to test. Ranges hold for all rows of the table at once.", Example(14, 60, null)),
        };
        return new Table(
            [
                new Column("Mark", 0, 150),
                new Column("Example", 160, 106) { Axis = StripAxis.Shares("line 52%", Line) },
                new Column("", 274, 74),
                new Column("It means", 356, 160),
            ],
            [.. examples.Select(example => new TableRow(Cells.Text(RichText.Strong(example.Name)), Cells.Strip(example.Share), Cells.Share(example.Share), Cells.Text(example.Means)))])
        {
            Caption = "The marks",
        };
    }

    private static SideBySide Charted(Study study)
    {
        var names = Filled.Columns.ToArray();
        var perColumn = (names.Length + Columns - 1) / Columns;
        return new SideBySide([.. names.Chunk(perColumn).Select(some => new Side(0, [new Table(
            [new Column("Column", 0, 84), new Column("Filled", 84, 80, Align.Right)],
            [.. some.Select(name =>
            {
                var filled = Filled.Of(study, name);
                return new TableRow(Cells.Text(name), Cells.Figure(filled.Count == 0 ? "not charted" : filled.ToString()));
            })])]))]);
    }

    private static IEnumerable<Block> LeftOut(Study study)
    {
        var charts = study.Charts;
        yield return new Heading("Plays left out, and why");
        var left = charts.RowsLeftOut + study.Chosen.LeftOut.Sum(rule => rule.Plays);
        yield return new Paragraph(
            RichText.Strong($"{Words.Figured(charts.RowsRead, "row")} read") + $" = {Figures.Count(study.Plays.Rows)} used + {Figures.Count(left)} left out + {Figures.Count(charts.RowsSetAside)} set aside.", TextStyle.Deck);
        var reasons = study.Chosen.LeftOut.Select(rule => $"{rule.Why}: {Figures.Count(rule.Plays)}")
            .Concat(charts.RowsLeftOut == 0 ? [] : [$"repeated headers: {Figures.Count(charts.RowsLeftOut)}"])
            .Concat(charts.RowsSetAside == 0 ? [] : [$"a required cell is blank or can not be read: {Figures.Count(charts.RowsSetAside)}, listed by the audit command"]).ToArray();
        yield return new Paragraph(reasons.Length == 0 ? "No row was left out." : Words.Capital(string.Join("; ", reasons)) + ".", TextStyle.Deck);
        if (study.Audit is { } audit)
        {
            yield return new Paragraph(RichText.Strong("Audit: ") + audit.Summary, TextStyle.Deck);
        }
    }

    private static IEnumerable<Block> PagesLeftOut(Study study)
    {
        yield return new Heading("Pages left out, and why");
        var gone = study.Placed.Where(placed => placed.Page is null).Select(placed => placed.Missing.Count > 0
            ? $"{placed.Entry.Name}: {Words.Join(placed.Missing)} not charted"
            : $"{placed.Entry.Name}: {placed.Entry.WhyEmpty?.Invoke(study) ?? placed.Entry.WhenEmpty}").ToArray();
        yield return new Paragraph(gone.Length == 0 ? "None: every page stands." : string.Join("; ", gone) + ".", TextStyle.Deck);
    }

    private static IEnumerable<Block> Glossary(Study study)
    {
        var limits = study.Week.Boundaries;
        var level = Figures.Number(study.Level * 100, 0);
        var words = new List<(string Word, string Means)>
        {
            ("Likely", $"the {level}% range of a rate (Wilson; of a mix Goodman). {EffectiveCounts.Of(study)} A new game plan is not in them."),
            ("Sure", "the likely range leaves out the line it is compared with."),
            ("Gained enough", $"{limits.SuccessFirst}% of the yards to go on first down, {limits.SuccessSecond}% on second, {limits.SuccessLate}% on third and fourth; a touchdown always."),
            ("Long play", $"a run of {limits.ExplosiveRun} yards or more, a pass of {limits.ExplosivePass} or more."),
        };
        if (study.Plays.IsCharted(ColumnNames.BackSide))
        {
            words.Add(("Weak, strong, middle", "the back stands away from the strength, on its side, or behind the quarterback."));
        }

        if (study.Plays.IsCharted(ColumnNames.RunScheme))
        {
            words.Add(("Gap schemes", "power, counter, trap and their kin; zone, perimeter, option and quarterback runs are the other families."));
        }

        var half = (words.Count + 1) / 2;
        yield return new SideBySide([.. words.Chunk(half).Select(some => new Side(0,
            [.. some.Select(word => new Paragraph(RichText.Strong(word.Word) + $": {word.Means}", TextStyle.Note))]))]);
    }
}
