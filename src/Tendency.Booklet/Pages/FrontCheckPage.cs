using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages;

/// <summary>Which front against their runs, how sure, and when does the answer turn?</summary>
internal static class FrontCheckPage
{
    private const int MostSchemes = 7;

    // Frames of a cost, in share of success above their usual: where a coach would notice one, three and six plays of a hundred.
    private const double LightCost = .01;
    private const double MiddleCost = .03;
    private const double DarkCost = .06;

    public static Page? Compose(Study study)
    {
        if (study.Fronts is not { } check || check.Ranking.Ranks.Count == 0)
        {
            return null;
        }

        return new Page("front-check", "Front check", Headline.Of(FrontVerdict.Lead(check.Ranking), Short(check)))
        {
            Deck = $"Success allowed: how often their runs would gain enough, if they keep calling what they called. Their runs so far: {SoFar(check)}.{(study.Weights.IsOn ? $" {study.Weights.Which} Film counts plain." : "")}",
            Blocks =
            [
                new Heading("What they run, what each front gives up", "points of success against their usual. Plus, framed: costs us. Bold: the range leaves out zero." + (study.Weights.IsOn ? " Ranked on the weighted mix." : "")),
                Matrix(study, check),
                Paragraph.Note(Notes(check)),
                new SideBySide([new Side(164, [.. Chances(study, check)]), new Side(340, [.. Turning(study, check)])]),
            ],
        };
    }

    private static string SoFar(FrontCheck check) => check.Sample.Base is { IsCharted: true } runs
        ? $"{Figures.Percent(check.Expected)}, {runs.Successes} of {runs.Plays}"
        : $"{Figures.Percent(check.Expected)} taken as usual, for want of film";

    private static string Points(FrontRank rank) => $"{Figures.Number(rank.ExpectedLoss * 100, 0)} points";

    private static string Short(FrontCheck check)
    {
        var first = check.Ranking.Ranks[0];
        var second = FrontVerdict.Next(check.Ranking);
        return check.Ranking.HasClearWinner || second is null
            ? $"It is best in {Figures.Number(first.ProbabilityBest * 100, 0)} of 100 draws."
            : $"On runs {Words.Title(first.Front)} leads in {Figures.Number(first.ProbabilityBest * 100, 0)} of 100 draws, {Words.Title(second.Front)} in {Figures.Number(second.ProbabilityBest * 100, 0)}.";
    }

    private static Table Matrix(Study study, FrontCheck check)
    {
        var schemes = FrontMix.Schemes(check.Matrix.Mix).Take(MostSchemes).ToArray();
        var columns = new List<Column> { new("Front", 0, 62) };
        columns.AddRange(schemes.Select((scheme, i) => new Column(Words.Title(scheme.Scheme), 64 + (i * 45), 43, Align.Center)));
        columns.Add(new Column("All their runs", 388, 70) { Axis = StripAxis.Shares($"usual {Figures.Percent(check.Expected)}", check.Expected) });
        columns.Add(new Column("Allowed", 464, 52));
        var order = check.Ranking.Ranks.Select(rank => (Rank: rank, Index: check.Matrix.Fronts.Index().First(front => front.Item.Name == rank.Front).Index));
        var share = new TableRow([
            Cells.Text(RichText.Strong("Their mix"), "share, runs"),
            .. schemes.Select(scheme => new HeatCell(Figures.Percent(scheme.Runs / check.Matrix.Mix.Runs), $"n = {Figures.Number(scheme.Runs, 0)}", HeatStep.None))])
        { Kind = RowKind.Total };
        TableRow[] mix = study.Weights.IsOn ? [share, WeightedMix(check, schemes)] : [share];
        return new Table(columns, [.. mix, .. order.Select(front => RowOf(check, front.Rank, front.Index, schemes))]) { Caption = "Success allowed by front and scheme", RowHeight = 31 };
    }

    private static TableRow WeightedMix(FrontCheck check, (string Scheme, double Runs)[] schemes) => new([
        Cells.Text(RichText.Strong("Weighted"), $"like {Weighing.Like(check.Matrix.Mix.EffectiveRuns)} runs"),
        .. schemes.Select(scheme => new HeatCell(Figures.Percent(Math.Min(1, FrontMix.Effective(check.Matrix.Mix, scheme.Scheme) / check.Matrix.Mix.EffectiveRuns)), $"like {Weighing.Like(FrontMix.Effective(check.Matrix.Mix, scheme.Scheme))}", HeatStep.None))])
    { Kind = RowKind.Total };

    private static TableRow RowOf(FrontCheck check, FrontRank rank, int front, (string Scheme, double Runs)[] schemes) => new([
        Cells.Name(Words.Title(rank.Front)),
        .. schemes.Select(scheme => Heat(check, front, scheme.Scheme)),
        new EstimateCell(rank.SuccessAllowed, rank.Low, rank.High, check.Expected),
        Cells.Text(RichText.Strong(Figures.Percent(rank.SuccessAllowed)), Figures.Range(new Inference.Intervals.Interval(rank.Low, rank.High)))]);

    private static Cell Heat(FrontCheck check, int front, string scheme)
    {
        var (allowed, half) = FrontMix.OfScheme(check.Matrix, front, scheme);
        var cost = allowed - check.Expected;
        var step = cost >= DarkCost ? HeatStep.Dark : cost >= MiddleCost ? HeatStep.Middle : cost >= LightCost ? HeatStep.Light : HeatStep.None;
        return new HeatCell(Figures.Signed(cost * 100, 0), Figures.PlusMinus(half * 100, 0), step, Math.Abs(cost) > half);
    }

    private static RichText Notes(FrontCheck check)
    {
        var schemes = FrontMix.Schemes(check.Matrix.Mix);
        var rest = schemes.Skip(MostSchemes).ToArray();
        return Words.Sentences(
            $"{FrontVerdict.Film(check)} Ratings assume equal players and correct technique: they rank questions for the staff, they do not choose the call.",
            rest.Length == 0 ? "" : $"Not shown, but counted at the right: {Words.Join(rest.Take(4).Select(scheme => Words.Plain(scheme.Scheme)))}{(rest.Length > 4 ? $" and {rest.Length - 4} more" : "")}.",
            check.Sample.WithoutScheme == 0 ? "" : $"{Words.Figured(check.Sample.WithoutScheme, "run")} without a rated scheme left out.");
    }

    private static IEnumerable<Block> Chances(Study study, FrontCheck check)
    {
        yield return new Heading("Chance each front is best");
        yield return new Bars([.. check.Ranking.Ranks.OrderByDescending(rank => rank.ProbabilityBest).Select(rank => new Bar(Words.Title(rank.Front), rank.ProbabilityBest, check.Ranking.HasClearWinner && rank.Rank == 1))]) { LabelWidth = 70 };
        var (first, last) = (check.Ranking.Ranks[0], check.Ranking.Ranks[^1]);
        yield return Paragraph.Note($"Mix and success re-drawn, the same mix for all. Against each draw’s best {Words.Title(first.Front)} gives away {Points(first)} on average{(first == last ? "" : $", {Words.Title(last.Front)} {Points(last)}")}. {FrontVerdict.WithPasses(study.FrontCard, first.Front)}");
        if (check.IfTheyAdjust is { } adjust)
        {
            yield return new Paragraph(adjust.Sentence, TextStyle.Deck);
            yield return Paragraph.Note(FrontVerdict.Adjusted(adjust));
        }
    }

    private static IEnumerable<Block> Turning(Study study, FrontCheck check)
    {
        yield return new Heading("How far the mix can move before the answer does");
        if (FrontPlot.Of(study, check) is { } plot)
        {
            yield return plot;
        }

        var turn = FrontVerdict.Turn(study, check);
        yield return new Paragraph(turn.Length > 0 ? turn : RichText.Strong("No run family turns the order ") + $"of {Words.Title(check.Ranking.Ranks[0].Front)} and the next: it leads at every share.", TextStyle.Deck);
        if (turn.Length > 0)
        {
            yield return Paragraph.Note(FrontVerdict.TurnDoubt(check));
        }
    }
}
