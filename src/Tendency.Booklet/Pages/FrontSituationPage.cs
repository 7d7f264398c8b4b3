using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages;

/// <summary>Which front in which situation?</summary>
internal static class FrontSituationPage
{
    public static Page? Compose(Study study)
    {
        var card = study.FrontCard;
        if (card.Count == 0)
        {
            return null;
        }

        return new Page("front-situation", "Front by situation", Finding(card))
        {
            Deck = "Runs and passes in their present share. Sure: in how many of 100 re-draws the front allows least. Second: the next front, and what it gives away. On runs: the first and how sure when only runs count."
                + (study.Weights.IsOn ? $" {study.Weights.Which} Fronts go by the weighted shares; “like 22”: the plays they are worth." : ""),
            Blocks =
            [
                new Table(
                    Columns(study),
                    [.. card.Select((line, i) => RowOf(study, line, i == 0))]) { Caption = "Front by situation" },
                Paragraph.Note(OnRuns(study, card[0])),
                Paragraph.Note("A thin situation leans on the whole mix by eight plays. A front in plain type is no clear winner, under 60 of 100: then personnel decides." + Uncounted(study, card[0])),
            ],
        };
    }

    private static List<Column> Columns(Study study)
    {
        var columns = new List<Column> { new("Situation", 0, 90), new("Plays", 90, 24, Align.Right) };
        columns.AddRange(study.Weights.IsOn
            ? [new Column("Run share, likely", 120, 76), new Column(Weighing.Head, 204, 48)]
            :
            [
                new Column("Run share", 122, 46) { Axis = StripAxis.Shares($"team {Figures.Percent(study.Runs.Share ?? 0)}", study.Runs.Share) },
                new Column("", 172, 76),
            ]);
        columns.AddRange(
        [
            new Column("Top runs", 256, 104),
            new Column("Our front", 368, 42),
            new Column("Sure", 412, 22, Align.Right),
            new Column("Second", 441, 36),
            new Column("On runs", 480, 36),
        ]);
        return columns;
    }

    private static string Finding(IReadOnlyList<FrontCardLine> card)
    {
        var sure = card.Where(line => line.Verdict == "best").ToArray();
        var fronts = card.Select(line => line.Front).Distinct().ToArray();
        return sure.Length > 0
            ? Headline.Of(
                $"{Words.Title(sure[0].Front)} is best {(sure.Length == card.Count ? "in every situation" : $"in {sure.Length} of {card.Count} situations")}.",
                sure.Select(line => line.Front).Distinct().Count() > 1 ? $"Others call for {Words.Join(sure.Select(line => Words.Title(line.Front)).Distinct().Skip(1))}." : "")
            : fronts.Length == 1 && card.Select(line => line.OnRuns).Distinct().ToArray() is [var onRuns] && onRuns != fronts[0]
                ? $"{Words.Title(fronts[0])} leads with passes counted, {Words.Title(onRuns)} on runs alone; neither is sure."
            : fronts.Length == 1
                ? $"{Words.Title(fronts[0])} leads everywhere, and nowhere is it sure: no situation parts the fronts."
                : "No situation parts the fronts: none is best in 60 of 100 draws.";
    }

    /// <summary>Why the front here may be another than against runs alone: what the passes add, with the numbers.</summary>
    private static string OnRuns(Study study, FrontCardLine all)
    {
        if (all.Front == all.OnRuns || study.Fronts is not { } check || check.Ranking.Ranks.Count == 0)
        {
            return $"{Words.Title(all.Front)} allows least on runs alone as well.";
        }

        double OnRunsAllows(string front) => check.Ranking.Ranks.First(rank => rank.Front == front).SuccessAllowed;
        PassCell OnPasses(string front) => check.Passes.First(pass => pass.Front == front);
        var (ours, runs) = (OnPasses(all.Front), OnPasses(all.OnRuns));
        return $"Why {Words.Title(all.Front)}, when {Words.Title(all.OnRuns)} leads on runs? On runs it allows {Figures.Percent(OnRunsAllows(all.Front))}, {Words.Title(all.OnRuns)} {Figures.Percent(OnRunsAllows(all.OnRuns))}. "
            + $"But {all.Plays - all.Runs} of {all.Plays} plays are passes, and with its rush, both sides together, rated {Figures.Signed(ours.Rush, 1)} against {Figures.Signed(runs.Rush, 1)} it is taken to allow {Figures.Percent(ours.SuccessAllowed)} of them, "
            + $"{Words.Title(all.OnRuns)} {Figures.Percent(runs.SuccessAllowed)}. What a rush point is worth is our choice: rush_step in the week file; at 0 runs alone decide.";
    }

    private static string Uncounted(Study study, FrontCardLine all) => study.Plays.Rows == all.Plays ? ""
        : $" {Words.Capital(Words.Counted(study.Plays.Rows - all.Plays, "play"))} called neither run nor pass {(study.Plays.Rows - all.Plays == 1 ? "is" : "are")} not counted here.";

    private static TableRow RowOf(Study study, FrontCardLine line, bool total)
    {
        var run = new Share(line.Runs, line.Plays, line.RunShareRange, study.Runs.Share);
        return new TableRow([
            Cells.Name(Words.Title(line.Situation)),
            Cells.Count(line.Plays),
            .. study.Weights.IsOn && line.Weighted is { } weighted ? (Cell[])[Cells.Share(run), Weighing.Cell(weighted, study.WeightedRuns.Share)] : [Cells.Strip(run), Cells.Share(run)],
            Cells.Counts(line.TopRuns.Select(top => new NamedCount(Words.Title(top.Run), top.Plays))),
            line.Verdict == "best" ? Cells.Text(RichText.Strong(Words.Title(line.Front)), "best") : Cells.Text(Words.Title(line.Front)),
            Cells.Figure(Figures.Number(line.Sure * 100, 0)),
            Cells.Text(Words.Title(line.Second), line.Second.Length == 0 ? "" : $"+{Figures.Number(line.Cost * 100, 0)} pts"),
            Cells.Text(Words.Title(line.OnRuns), $"sure {Figures.Number(line.OnRunsSure * 100, 0)}")])
        {
            Kind = total ? RowKind.Total : RowKind.Plain,
        };
    }
}
