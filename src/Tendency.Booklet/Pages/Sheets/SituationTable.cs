using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>The front of the sideline sheet: situation, what they call, our front, what to remember.</summary>
internal static class SituationTable
{
    private const double CellPitch = 64;
    private const double RowHeight = 27;
    private const int Tops = 2;

    /// <param name="study">The plays and the front check.</param>
    /// <param name="options">Level and seed of the front of each row.</param>
    public static Table Of(Study study, FrontOptions options)
    {
        var backs = CallCells.Backs(study);
        var situations = SheetSituation.Of(study);
        var fronts = study.Fronts is not { } check ? [] : FrontCard.Of(
            study.Plays, [.. situations.Select(s => new CardSituation(s.Name, s.Holds(study.Plays)))], check, options).ToDictionary(line => line.Situation, StringComparer.Ordinal);
        var remember = situations.ToDictionary(s => s.Name, s => Reminders.Of(study, s.PlaysOf(study), fronts.GetValueOrDefault(s.Name)?.Front), StringComparer.Ordinal);
        var usual = study.FrontCard.Count > 0 ? study.FrontCard[0].Front : "";
        var named = fronts.Where(front => front.Value.Front != usual).ToDictionary();
        var shown = new Shown(study.Plays.IsCharted(ColumnNames.RunScheme), study.Plays.IsCharted(ColumnNames.PassConcept), named.Count > 0, remember.Values.Any(lines => lines.Count > 0));
        return new Table(
            Columns(backs, shown),
            [.. situations.Select((situation, i) => RowOf(study, situation, backs, shown, named.GetValueOrDefault(situation.Name), remember[situation.Name]) with
            {
                RuleAbove = i > 0 && situation.Name[0] != situations[i - 1].Name[0],
            })])
        { Caption = "Call by situation, our front, what to remember", RowHeight = RowHeight };
    }

    private sealed record Shown(bool Runs, bool Passes, bool Fronts, bool Reminders);

    private static List<Column> Columns(IReadOnlyList<(string Value, string Head)> backs, Shown shown)
    {
        var columns = new List<Column> { new("", 0, 56), new("All", 58, CellPitch - 2, Align.Center) };
        columns.AddRange(backs.Select((back, i) => new Column(back.Head, 58 + ((i + 1) * CellPitch), CellPitch - 2, Align.Center)));
        var next = 58 + ((backs.Count + 1) * CellPitch) + 10;
        foreach (var (there, head, width) in new[] { (shown.Runs, "Top runs", 78d), (shown.Passes, "Top passes", 78), (shown.Fronts, "Our front", 70) })
        {
            if (there)
            {
                columns.Add(new Column(head, next, width));
                next += width + 12;
            }
        }

        if (shown.Reminders)
        {
            columns.Add(new Column("Remember", next, 720 - next) { Remark = "with counts here" });
        }

        return columns;
    }

    private static TableRow RowOf(Study study, SheetSituation situation, IReadOnlyList<(string Value, string Head)> backs, Shown shown, FrontCardLine? front, IReadOnlyList<string> remember)
    {
        var plays = situation.PlaysOf(study);
        var cells = new List<Cell> { Cells.Name(situation.Name) };
        cells.AddRange(CallCells.Of(study, new Condition(situation.Column, situation.Values), backs));
        if (shown.Runs)
        {
            cells.Add(Cells.Counts(Frequent.Values(plays, ColumnNames.RunScheme, Tops)));
        }

        if (shown.Passes)
        {
            cells.Add(Cells.Counts(Frequent.Values(plays, ColumnNames.PassConcept, Tops)));
        }

        if (shown.Fronts)
        {
            cells.Add(front is null ? Cells.Blank : FrontCell(front));
        }

        if (shown.Reminders)
        {
            cells.Add(Cells.Text([.. remember.Select(RichText.Plain)]));
        }

        return new TableRow(cells) { Plays = study.ListOf(plays) };
    }

    /// <summary>Only of a row whose front is another than over all plays. Bold when it may be called best; else both leaders, in plain type.</summary>
    private static Cell FrontCell(FrontCardLine line) => line.Sure >= FrontRanking.SureEnough
        ? Cells.Name(Short.Cut(Words.Title(line.Front)), $"{Figures.Percent(line.Sure)} best")
        : Cells.Text(Short.Cut(Words.Title(line.Front)) + (line.Second.Length > 0 ? "," : ""), line.Second.Length > 0 ? $"or {Short.Cut(Words.Title(line.Second))}" : $"{Figures.Percent(line.Sure)} best");
}
