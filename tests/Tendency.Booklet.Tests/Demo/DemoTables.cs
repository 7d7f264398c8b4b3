using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Tests.Demo;

internal static class DemoTables
{
    public static readonly Page DownDistance = new("down-distance", "Down and distance", "They run on every short down and throw on third and 3 or more. First and 10 leans run; second and long is a pass.")
    {
        Deck = "Dot: share of plays that were runs. Bar: likely range. Line: team rate. Solid dot, bold %: differs from it.",
        Blocks =
        [
            new Table(
                [
                    new Column("Situation", 0, 98),
                    new Column("Plays", 72, 34, Align.Right),
                    new Column("Run share", 120, 106) { Axis = StripAxis.Shares("team 52%", .52) },
                    new Column("Runs, likely", 240, 88),
                    new Column("Top runs", 336, 80),
                    new Column("Top passes", 430, 86),
                ],
                [
                    TableRow.Total(Row("All plays", "", 149, 286)),
                    new TableRow(Row("1st & 10", "", 76, 118)) { RuleAbove = true },
                    new TableRow(Row("1st, other", "not 10 to go", 3, 6)),
                    new TableRow(Row("2nd short", "1 to 3", 17, 18)),
                    new TableRow(Row("2nd medium", "4 to 6", 13, 21)),
                    new TableRow(Row("2nd long", "7 or more", 15, 53)),
                    new TableRow(Row("3rd short", "1 to 3", 12, 13)),
                    new TableRow(Row("3rd medium", "4 to 6", 4, 32)),
                    new TableRow(Row("3rd long", "7 or more", 1, 15)),
                    new TableRow(Row("4th", "", 3, 4)),
                    TableRow.GroupHead("Red zone, 20 and in", "(also counted in the rows above)"),
                    new TableRow(Row("1st, red zone", "", 15, 25)),
                    new TableRow(Row("2nd, red zone", "", 4, 12)),
                    new TableRow(Row("3rd, red zone", "", 2, 8)),
                    new TableRow(Row("Inside the 5", "", 0, 0)),
                ])
            {
                RowHeight = 36,
                Caption = "Run share by down and distance",
            },
            Paragraph.Note("Counts at right of each scheme are plays. Ties keep alphabetical order. Rows under 5 plays show the count only."),
        ],
    };

    public static readonly Page FrontCheck = new("front-check", "Front check", "Start in Tight. It stays best until gap schemes pass 38% of runs; they are at 31%, likely 24–39%.")
    {
        Blocks =
        [
            new Heading("What they run, what each front gives up", "Success a run, against average. Plus, dark frame: costs us."),
            new Table(
                [
                    new Column("Front", 0, 55),
                    .. new[] { "Inside zone", "Outside zone", "Split zone", "Power", "Counter", "Trap", "Lead" }.Select((name, i) => new Column(name, 62 + (45 * i), 45, Align.Center)),
                    new Column("Against their mix", 393, 88) { Axis = new StripAxis(-1, 1, [-1, 0, 1], Percent: false) { Line = 0, Unit = "yd" } },
                    new Column("", 486, 30, Align.Right),
                ],
                [
                    Front("Tight", [-1.3, .3, -1.0, .3, .5, -.8, -.7], -.47),
                    Front("Under", [-.4, -.5, -.1, -.7, -.4, .1, -.3], -.39),
                    Front("Bear", [-.9, 1.2, -.5, -.6, .2, -1.1, -1.0], -.32),
                    Front("Over", [.2, -.7, .1, .1, -.3, .4, 0], -.05),
                    Front("Odd", [.6, -.1, .4, .7, .3, .9, .5], .44),
                ])
            {
                RowHeight = 31,
            },
            Paragraph.Note(RichText.Strong("Bold:") + " the 95% range leaves out zero. Draws and sneaks (8 runs) are left out."),
            new SideBySide(
            [
                new Side(160,
                [
                    new Heading("Chance each front is best"),
                    new Bars([new Bar("Tight", .78, true), new Bar("Under", .15), new Bar("Bear", .05), new Bar("Over", .02), new Bar("Odd", .004)]),
                    Paragraph.Note("10,000 re-draws of their mix and our yields. All fronts see the same re-drawn mix, so their ranges move together. Within 5 points of the lead would print as a tie."),
                    new Paragraph(RichText.Strong("Move to Under") + " if gap schemes reach 4 in the first 10 runs and the back is still going strong."),
                ]),
                new Side(0,
                [
                    new Heading("How far the mix can move before the answer does"),
                    new Plot(
                        new PlotAxis(0, 60, [.. Enumerable.Range(0, 7).Select(i => new Tick(10 * i, i == 6 ? "60%" : $"{10 * i}"))], "gap schemes, share of runs"),
                        new PlotAxis(-.8, .65, [new Tick(-.75, "−0.75"), new Tick(-.5, "−0.50"), new Tick(-.25, "−0.25"), new Tick(0, "0.0"), new Tick(.25, "+0.25"), new Tick(.5, "+0.50")], "yards a run, against average; lower is better"),
                        260,
                        "Yards a run of five fronts as the share of gap schemes grows; Tight is lowest up to 38%, then Under.")
                    {
                        Bands = [new PlotBand(24, 39, Upright: true, "likely 24–39")],
                        Rules = [new PlotRule(31, Upright: true, "now 31%"), new PlotRule(0, Upright: false, Dotted: true)],
                        Lines =
                        [
                            new PlotLine([0, 60], [.37, .5], "Odd"),
                            new PlotLine([0, 60], [-.07, -.02], "Over"),
                            new PlotLine([0, 60], [-.75, -.18], "Tight") { Winner = true },
                            new PlotLine([0, 60], [-.26, -.35], "Bear"),
                            new PlotLine([0, 60], [-.36, -.42], "Under"),
                        ],
                        Rings = [new PlotRing(38, -.395, "even at 38%")],
                    },
                ]),
            ])
            { Gutter = 20 },
        ],
    };

    public static readonly Page Tells = new("tells", "Tells", "Seven tells hold up on games they were not found in. The back gives away four of them.")
    {
        Deck = "Ranked by how far the likely range clears the base rate. Line on each strip: base rate, without the tell.",
        Blocks =
        [
            new Table(
                [
                    new Column("", 0, 14, Align.Right),
                    new Column("When you see it, and what comes", 23, 178),
                    new Column("How often", 206, 86) { Axis = StripAxis.OwnBaselines() },
                    new Column("Count, likely", 306, 70),
                    new Column("By game", 380, 52),
                    new Column("Held-out hits", 432, 84, Align.Right),
                ],
                [
                    Tell(1, "Guard light on his hand, 1st down", "pass", 14, 18, .37),
                    Tell(2, "Tight end in a two-point stance", "pass", 33, 44, .48),
                    Tell(3, "Bunch, motion across before snap", "pass", 13, 15, .5),
                    Tell(4, "Back weak, in Doubles or Trips", "run", 30, 45, .41),
                    TableRow.GroupHead("Not yet: held-out hits could be no more than the base rate"),
                    Tell(5, "No huddle after a first down", "go the same side", 12, 17, .5),
                    Tell(6, "Towel tucked by the center", "run outside zone", 3, 4, .2),
                ]),
            Paragraph.Note("G1 Calder Bay, G2 Eastmoor, G3 Quarry Hill, G4 Ash Ferry. 41 cues tried; about 2 would look this good by luck."),
        ],
    };

    public static readonly Page SmallSamples = new("small-samples", "How to read", "Small samples, long names and empty states.")
    {
        Blocks =
        [
            new Heading("How a strip changes with the count"),
            new Table(
                [
                    new Column("", 0, 80),
                    new Column("", 80, 60, Align.Right),
                    new Column("", 160, 180) { Axis = new StripAxis(0, 1, [0, .25, .5, .75, 1]) { Line = .52 } },
                    new Column("", 356, 160),
                ],
                [
                    Exhibit("0 plays", 0, 0, "Row stays, strip blank, words “no plays”."),
                    Exhibit("1 to 4 plays", 2, 3, "Hatch across the strip, count only, no %."),
                    Exhibit("5 to 9 plays", 5, 7, "Drawn; bar is long. Never bold by eye."),
                    Exhibit("10 or more", 31, 44, "Drawn."),
                    Exhibit("none of n", 0, 16, "Dot at 0, one-sided bar."),
                    Exhibit("all of n", 9, 9, "Dot at 100, one-sided bar."),
                    Exhibit("200 or more", 149, 286, "Bar may be hidden by the dot: fine."),
                ]),
            new Heading("Scheme mix", "Share of 149 runs. Bars are 95% for all nine at once, so any two rows can be compared."),
            new Table(
                [
                    new Column("Scheme", 0, 90),
                    new Column("Runs", 100, 26, Align.Right),
                    new Column("", 142, 160) { Axis = StripAxis.UpTo(.5) },
                    new Column("Share, likely", 318, 70),
                    new Column("Yards", 388, 50, Align.Right),
                    new Column("Gained enough", 446, 70, Align.Right),
                ],
                [
                    Mix("Inside zone", 44, 26),
                    Mix("Outside zone", 25, 17),
                    Mix("Power", 21, 12),
                    Mix("A scheme with a very long name of its own", 3, 0),
                ]),
            new Heading("Empty states", "Say what is missing and what would fill it."),
            new EmptyState(RichText.Strong("Back side was not charted.") + " This page needs it on 20 plays; it is filled on 0 of 286. Chart column: back_side."),
            new EmptyState(RichText.Strong("Tight and Under are level") + " (44% and 41%). Pick by personnel; the numbers do not separate them."),
            new Together([new Heading("Cut-up", "Every play behind a key cell"), new PlayListing("Back weak, run", DemoBooklet.Plays(("Calder Bay", [7, 12, 31, 44]), ("Eastmoor", [3, 19]), ("Quarry Hill", [8, 22, 41, 60])))]),
        ],
    };

    private static Cell[] Row(string name, string remark, int runs, int plays)
    {
        var share = DemoBooklet.Share(runs, plays, .52);
        return
        [
            Cells.Name(name, remark),
            Cells.Count(plays),
            Cells.Strip(share),
            Cells.Share(share),
            Cells.Counts(plays == 0 ? [] : [new("Inside zone", 7), new("Outside zone", 3), new("Split zone with a lead", 1)]),
            Cells.Counts(plays == 0 ? [] : [new("Four verticals", 9), new("Screen", 8), new("Stick", 5)]),
        ];
    }

    private static TableRow Front(string name, double[] yards, double mix) => new(
    [
        Cells.Name(name),
        .. yards.Select(value => (Cell)new HeatCell(Figures.Signed(value), Figures.PlusMinus(.8), value > .8 ? HeatStep.Dark : value >= .4 ? HeatStep.Middle : value > .15 ? HeatStep.Light : HeatStep.None, Math.Abs(value) > .8)),
        new EstimateCell(mix, mix - .35, mix + .35, 0),
        Cells.Figure(Figures.Signed(mix, 2)),
    ]);

    private static TableRow Tell(int rank, string cue, string outcome, int hits, int plays, double rate)
    {
        var share = DemoBooklet.Share(hits, plays, rate);
        var list = DemoBooklet.Plays(("Calder Bay", [4, 18, 42, 55]), ("Eastmoor", [13, 36, 51, 61]), ("Quarry Hill", [15, 26, 48]), ("Ash Ferry", [7, 39, 55, 58, 63]));
        return new TableRow(
            Cells.Figure(RichText.Strong(Figures.Count(rank))),
            Cells.Cue(RichText.Strong(cue), RichText.Plain("they ") + RichText.Strong(outcome), list),
            Cells.Strip(share),
            new ShareCell(share) { Form = ShareForm.WithBase },
            Cells.Spark([DemoBooklet.Share(3, 4), DemoBooklet.Share(4, 5), DemoBooklet.Share(0, 0), DemoBooklet.Share(4, 6)], rate),
            new ShareCell(DemoBooklet.Share(hits * 2 / 3, plays * 2 / 3, rate)) { Form = ShareForm.RightStacked })
        {
            Plays = list,
        };
    }

    private static TableRow Exhibit(string name, int count, int plays, string words)
    {
        var share = DemoBooklet.Share(count, plays, .52);
        return new TableRow(Cells.Name(name), Cells.Figure(plays == 0 ? "0" : Figures.CountOf(share)), Cells.Strip(share), Cells.Text(words));
    }

    private static TableRow Mix(string name, int runs, int good)
    {
        var share = DemoBooklet.Share(runs, 149);
        return new TableRow(Cells.Name(name), Cells.Count(runs), Cells.Strip(share), Cells.ShareLine(share, range: true), Cells.Figure("4.4 ± 1.4"), Cells.ShareLine(DemoBooklet.Share(good, runs)));
    }
}
