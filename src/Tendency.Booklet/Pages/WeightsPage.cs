using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Brief;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>Which games count more, how much, and what does it change?</summary>
internal static class WeightsPage
{
    // Games and situations share the sheet.
    private const int MostRows = 9;

    public static Page? Compose(Study study) => !study.Weights.IsOn ? null : new Page(Weighing.Anchor, "Which games count more", Finding(study))
    {
        Deck = study.Weights.Why,
        Blocks =
        [
            Games(study),
            Paragraph.Note(Words.Sentences("Counts: what one play is worth.", HowFrontsWeigh(study), Worth(study))),
            .. study.Side == "offense" ? Parted(study) : [],
            .. Pages(study),
        ],
    };

    private static string Finding(Study study)
    {
        var games = study.Games.Select(game => (Game: game, Weight: study.Weights.Of(game))).OrderByDescending(game => game.Weight).ToArray();
        var (most, least) = (games[0], games[^1]);
        if (most.Weight - least.Weight < .005)
        {
            return games.Length == 1 ? "One game only: there is none to count it against." : "All games count the same after all.";
        }

        var times = most.Weight / least.Weight;
        return Headline.First(
            $"{most.Game} counts most: one play there weighs {(times > 100 ? "over 100" : Figures.Number(times, 1))} times one against {least.Game}.",
            $"A play counts from {Weighing.Weight(least.Weight)} to {Weighing.Weight(most.Weight)}, by game.");
    }

    private static Table Games(Study study)
    {
        var byFronts = study.Weights.Reasons.Any(reason => reason.Name == "fronts");
        var columns = new List<Column> { new("Game", 0, 112), new("Plays", 112, 28, Align.Right) };
        if (byFronts)
        {
            columns.Add(new Column("Fronts like ours", 156, 84));
            columns.Add(new Column("", 246, 54));
        }

        // One weight speaks for itself; of two that multiply each is shown.
        var reasons = study.Weights.Reasons.Count > 1 ? study.Weights.Reasons : [];
        columns.AddRange(reasons.Select((reason, i) => new Column($"By {reason.Name}", 302 + (i * 44), 40, Align.Right)));
        columns.Add(new Column("Counts", 392, 34, Align.Right));
        columns.Add(new Column("Of all plays", 434, 34, Align.Right));
        columns.Add(new Column("Weighted", 472, 44, Align.Right));
        var all = study.Games.Sum(game => study.Weights.Of(game) * PlaysOf(study, game).Rows);
        return new Table(columns, [.. study.Games.Select(game => RowOf(study, game, byFronts, reasons, all))]) { Caption = "Weight of each game" };
    }

    private static TableRow RowOf(Study study, string game, bool byFronts, IReadOnlyList<WeightReason> reasons, double all)
    {
        var plays = PlaysOf(study, game);
        var weight = study.Weights.Of(game);
        var cells = new List<Cell> { Cells.Name($"{study.ShortGames[game]} {game}", GamesPage.Dated(study, game)), Cells.Count(plays.Rows) };
        if (byFronts)
        {
            var like = study.Weights.LikeFronts.GetValueOrDefault(game);
            cells.AddRange(like.Plays == 0
                ? [Cells.Text("no front charted"), Cells.Blank]
                : [Cells.Bar(like.Share!.Value), Cells.Text(Figures.CountOf(like.Count, like.Plays))]);
        }

        cells.AddRange(reasons.Select(reason => Cells.Figure(Weighing.Weight(reason.ByGame.GetValueOrDefault(game, 1)))));
        cells.Add(Cells.Figure(RichText.Strong(Weighing.Weight(weight))));
        cells.Add(Cells.Figure(Figures.Percent((double)plays.Rows / study.Plays.Rows)));
        cells.Add(Cells.Figure(Figures.Percent(weight * plays.Rows / all)));
        return new TableRow(cells);
    }

    private static PlayLog PlaysOf(Study study, string game) => study.Plays.Where(ColumnNames.Game, game);

    private static string HowFrontsWeigh(Study study)
    {
        if (!study.Weights.Reasons.Any(reason => reason.Name == "fronts"))
        {
            return "";
        }

        var ours = study.Fronts?.Matrix.Fronts.Select(front => front.Name) ?? study.Week.Fronts;
        var plan = $"Like ours: the front charted is one of our plan ({Words.Join(ours.Select(Words.Title))}). By fronts a game counts {Figures.Number(GameWeights.LeastLikeness, 2)} where none is, 1 where all are, evenly between: our choice, no source.";
        return study.Games.All(study.Weights.LikeFronts.ContainsKey) ? plan : plan + " A game without a charted front counts like the average of the others.";
    }

    private static string Worth(Study study)
    {
        var games = study.Plays.Category(ColumnNames.Game);
        var like = study.Weights.EffectivePlays(Enumerable.Range(0, study.Plays.Rows).Select(row => games[row]));
        return $"{Words.Figured(study.Plays.Rows, "play")} count like {Weighing.Like(like)} of equal weight: weighting costs film, so weighted ranges are wider. “Like” in a table counts besides that plays come in games.";
    }

    private static IEnumerable<Block> Parted(Study study)
    {
        var lines = (Plain: study.Runs.Share ?? 0, Weighted: study.WeightedRuns.Share);
        var looked = Claims.Situations(study)
            .Select(when => (when.Words, Plain: study.RunShare(when.Plays), Weighted: study.Weighted(when.Plays, ColumnNames.Call, "run")))
            .Where(row => row.Plain.Plays >= CallVerdict.FewestPlays && row.Weighted.IsEnough)
            .ToArray();
        var parted = looked.OrderByDescending(row => Math.Abs(row.Weighted.Share - row.Plain.Value!.Value)).Take(Math.Clamp(MostRows - study.Games.Count, 3, 5)).ToArray();
        if (parted.Length == 0)
        {
            yield break;
        }

        yield return new Heading("Where the weights move the run share most", $"{parted.Length} of {Words.Figured(looked.Length, "situation")} looked at; a few points are no news. Weighted team rate {Figures.Percent(lines.Weighted)}.");
        yield return new Table(
            [
                new Column("Situation", 0, 136),
                new Column("Plays", 136, 26, Align.Right),
                new Column("Run share", 176, 76) { Axis = StripAxis.Shares($"team {Figures.Percent(lines.Plain)}", lines.Plain) },
                new Column("Runs, likely", 262, 80),
                new Column(Weighing.Head, 350, 52),
                new Column("Points", 402, 34, Align.Right),
                new Column("Sure of a lean", 446, 70),
            ],
            [
                Row("All plays", study.RunShare(study.Plays), study.WeightedRuns) with { Kind = RowKind.Total },
                .. parted.Select(row => Row(row.Words, row.Plain, row.Weighted)),
            ])
        { Caption = "Run share, plain and weighted" };

        // The difference of the two percents as printed.
        static double Points(double share) => Math.Round(share * 100, MidpointRounding.AwayFromZero);

        TableRow Row(string name, Share plain, WeightedShare weighted) => new(
            Cells.Name(name),
            Cells.Count(plain.Plays),
            Cells.Strip(plain),
            Cells.Share(plain),
            Weighing.Cell(weighted, lines.Weighted),
            Cells.Figure(Figures.Signed(Points(weighted.Share) - Points(plain.Value ?? 0), 0)),
            Cells.Text((plain.Differs, weighted.Differs(lines.Weighted)) switch
            {
                (true, true) => "both ways",
                (true, false) => "by plain counts only",
                (false, true) => "weighted only",
                _ => "",
            }));
    }

    private static IEnumerable<Block> Pages(Study study)
    {
        var weighted = study.Placed.Where(placed => placed.Page is { } page && page.Deck.Contains(study.Weights.Which, StringComparison.Ordinal)).Select(placed => placed.Entry.Name).ToArray();
        yield return new Heading("Where they are used");
        yield return new Paragraph(
            (weighted.Length == 0 ? "" : $"Weighted shares stand beside the plain counts on the brief and on these pages: {Words.Join(weighted)}. ")
            + $"Every other page{(study.Side == "offense" ? ", tells and guesses among them," : "")} counts all games alike. Dots, headlines and the brief’s sentences go by plain counts"
            + (study.Side == "offense" ? "; the choice of a front goes by the weighted mix of runs." : "."),
            TextStyle.Deck);
    }
}
