using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Tests.Demo;

internal static class DemoSheet
{
    private static readonly string[] Situations = ["1st & 10", "2nd 1–3", "2nd 4–6", "2nd 7+", "3rd 1–3", "3rd 4–6", "3rd 7+", "Red 20–6", "Red 5–1"];

    public static readonly Page Page = new("sideline-sheet", "Sideline sheet", "offense, sideline sheet")
    {
        Kind = PageKind.Sheet,
        Blocks =
        [
            new SideBySide(
            [
                new Side(316, [new Heading("Run or pass", "black: sure run. boxed: sure pass. gray: could be even") { Bare = true }, Calls(Situations), new Heading("Formation"), Calls(["Doubles", "Trips", "Wing", "Bunch"])]),
                new Side(196, [new Heading("Tells that hold", "count, held-out") { Bare = true }, Tells(), new Heading("Runs", "149; away from the back 66%"), Runs()]),
                new Side(0,
                [
                    new Heading("Front", "78% sure") { Bare = true },
                    Paragraph.Lead(RichText.Strong("Start in Tight.")),
                    new Paragraph(RichText.Plain("Go to ") + RichText.Strong("Under") + " at 4 gap runs in the first 10. Even at 38% gap; now 31% (46/149; 24–39%)."),
                    new Heading("Rusher", "74% sure"),
                    Paragraph.Lead(RichText.Strong("To the back's side.")),
                    new Paragraph("Alone 61% (33/54; 48–73%). Slide away 68% (46/68; 56–78%). Move late."),
                    new Heading("Watch for"),
                    new Paragraph("Motion up to 53% in G3–G4 (74/143). No huddle 22% in G4 (15/67)."),
                ]),
            ])
            { Gutter = 18 },
        ],
    };

    private static Table Calls(string[] rows) => new(
        [
            new Column("", 0, 62),
            new Column("All", 64, 62, Align.Center),
            new Column("Weak", 126, 62, Align.Center),
            new Column("Home", 188, 62, Align.Center),
            new Column("Strong", 250, 62, Align.Center),
        ],
        [.. rows.Select((name, i) => new TableRow(
            Cells.Name(name),
            new CallCell("run 64", "76/118, 55–72", CallTone.SureRun),
            i % 2 == 0 ? new CallCell("2 of 3", "", CallTone.TooFew) : new CallCell("pass 88", "28/32, 72–95", CallTone.SurePass),
            new CallCell("even 50", "4/8, 22–78", CallTone.Even),
            new CallCell("run 62", "13/21, 41–79", CallTone.Plain)))])
    { Bare = true, RowHeight = 27 };

    private static Table Tells() => new(
        [new Column("", 0, 92), new Column("", 94, 68, Align.Right), new Column("", 168, 28, Align.Right)],
        [.. new[] { "Guard light, 1st down", "TE in two-point", "Bunch, motion across" }.Select(cue => new TableRow(Cells.Text(cue, RichText.Strong("pass 78%")), Cells.Text("14/18, 55–91%"), Cells.Name("8/12")))]);

    private static Table Runs() => new(
        [new Column("", 0, 70), new Column("", 74, 64), new Column("", 140, 56, Align.Right)],
        [.. new[] { ("Inside zone", .30), ("Outside zone", .17), ("Power", .14) }.Select(run => new TableRow(Cells.Name(run.Item1), Cells.Bar(run.Item2, full: .4), Cells.Text("44, 23–37%")))])
    { Bare = true, RowHeight = 13 };
}
