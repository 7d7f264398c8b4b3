using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Tests.Demo;

internal static class DemoPictures
{
    private static readonly (string Name, int Weak, int Home, int Strong)[] Sets =
        [("Doubles", 16, 11, 46), ("Trips", 21, 10, 38), ("Wing", 9, 17, 18), ("Bunch", 5, 10, 12), ("I twins", 3, 17, 4), ("Heavy", 0, 10, 0)];

    public static readonly Page Formations = new("formations", "Formation and back side", "Back weak, 71% run; back strong, 42%. Of the formations, only I twins and Empty give it away.")
    {
        Deck = "Run share by where the back stands. Gray circles: his spots. Strength is to the right in every picture.",
        Blocks =
        [
            new Heading("All formations"),
            new Table(
                [
                    new Column("", 0, 100),
                    new Column("", 100, 50, Align.Right),
                    new Column("", 170, 200) { Axis = new StripAxis(0, 1, [0, .25, .5, .75, 1]) { Line = .52, LineName = "team 52%" } },
                    new Column("", 386, 130),
                ],
                [Side("Back weak", 44, 62), Side("Back home (behind QB)", 49, 75), Side("Back strong", 50, 118), Side("No back (Empty)", 2, 22)])
            { Bare = true },
            Paragraph.Note("Back unseen on 9 plays (4 runs): left out here, kept in the team rate."),
            new SmallMultiples([.. Sets.Select(set => new Panel(set.Name, $"run 48%, {set.Home} of {set.Home + set.Strong}",
                [
                    FormationPicture(),
                    new Table(
                        [
                            new Column("", 0, 40),
                            new Column("", 40, 68) { Axis = StripAxis.Shares("", .52) },
                            new Column("", 112, 52, Align.Right),
                        ],
                        [PanelRow("weak", set.Weak), PanelRow("home", set.Home), PanelRow("strong", set.Strong)])
                    { Bare = true, RowHeight = 13 },
                    Paragraph.Note("Runs: outside zone 11, split zone 9"),
                ]))]),
        ],
    };

    public static readonly Page RunGame = new("run-game", "Run game", "Zone first, 86 of 149 runs. With the back offset, two runs in three go away from him.")
    {
        Blocks =
        [
            new Heading("Where runs hit, relative to the back", "94 runs, back turned to the left. Whiskers hold for all eight gaps."),
            GapPicture(),
            new SmallMultiples([.. new[] { "Inside zone", "Outside zone", "Power and counter" }.Select(name => new Panel(name, "25 runs", [Small()]) { Subtitle = "away 84%, 21 of 25; likely 65–94%" })]),
        ],
    };

    public static readonly Page FrontCard = new("front-card", "Front card", "Tight against Counter: Will runs through behind the nose, Mike fits the C gap, Sam squeezes the kick-out.")
    {
        Blocks = [Card(), new Heading("Gap ledger", "One man for every gap. Counter adds one gap at the kick-out; Robber makes the count."), Ledger(), Paragraph.Call(RichText.Strong("Check to Under") + " when the tight end trades or goes in motion away: Sam has no one to squeeze.")],
    };

    public static readonly Page Steadiness = new("steadiness", "Steadiness", "Motion rose in the last two games and no-huddle in the last. Every run and pass habit held.")
    {
        Deck = "Dot and bar: each game's rate and likely range, in order. Gray band: all four together. Moved: luck alone spreads a steady rate this far less than 1 time in 20.",
        Blocks =
        [
            new SmallMultiples([.. new[] { "Motion before the snap", "No huddle", "Gained enough", "Run, 1st & 10", "Gap schemes, of runs", "Inside zone, of runs", "Pass, third and 3+", "Runs away from the back", "Run share" }
                .Select((name, i) => new Panel(name, "", [Habit(i)]) { Subtitle = i < 2 ? "moved, under 1% by luck alone" : "steady, 21% by luck alone", Marked = i < 2 })]),
            Paragraph.Note("Games left to right: G1 Calder Bay, G2 Eastmoor, G3 Quarry Hill, G4 Ash Ferry. Counts under each dot."),
        ],
    };

    private static TableRow Side(string name, int runs, int plays)
    {
        var share = DemoBooklet.Share(runs, plays, .52);
        return new TableRow(Cells.Text(name), Cells.Text($"{plays} plays"), Cells.Strip(share), new ShareCell(share) { Form = ShareForm.OneLine });
    }

    private static TableRow PanelRow(string name, int plays)
    {
        var share = DemoBooklet.Share(plays * 2 / 3, plays, .52);
        return new TableRow(Cells.Text(name), Cells.Strip(share), Cells.ShareLine(share));
    }

    private static Diagram FormationPicture()
    {
        var shapes = new List<Shape>();
        for (var i = -2; i <= 2; i++)
        {
            shapes.Add(i == 0 ? new BoxShape(82 - 4.2, 10 - 4.2, 8.4, 8.4, Tone.White, 1) : new CircleShape(82 + (11 * i), 10, 4.2, Tone.White, 1));
        }

        foreach (var x in new[] { 8.0, 36, 130, 152 })
        {
            shapes.Add(new CircleShape(x, x is 8 or 152 ? 10 : 16, 4.2, Tone.White, 1));
        }

        shapes.Add(new CircleShape(82, 28, 4.2, Tone.White, 1));
        shapes.Add(new CircleShape(68, 28, 4.2, Tone.Middle, 1));
        shapes.Add(new CircleShape(96, 28, 4.2, Tone.Middle, 1));
        return new Diagram(164, 46, shapes, "Four receivers spread, back beside the quarterback on either side.");
    }

    private static Diagram GapPicture()
    {
        var shapes = new List<Shape>();
        string[] gaps = ["D", "C", "B", "A", "A", "B", "C", "D"];
        int[] runs = [2, 9, 12, 9, 18, 21, 17, 6];
        for (var i = 0; i < 8; i++)
        {
            var share = DemoBooklet.Share(runs[i], 94);
            var x = 76 + (52 * i);
            double Y(double value) => 140 - (value * 240);
            shapes.Add(new BoxShape(x - 11.5, Y(share.Value!.Value), 23, 140 - Y(share.Value.Value), Tone.Dark, 0));
            shapes.Add(new PathShape([new Spot(x - 11.5, Y(share.Value.Value)), new Spot(x + 11.5, Y(share.Value.Value))], 1.6));
            shapes.Add(new PathShape([new Spot(x, Y(share.Likely!.Value.Low)), new Spot(x, Y(share.Likely.Value.High))], 0.9));
            shapes.Add(new WordShape(x, Y(share.Likely.Value.High) - 14, Figures.Percent(share), 10.5, true));
            shapes.Add(new WordShape(x, Y(share.Likely.Value.High) - 4, Figures.CountOf(share), 7.5));
            shapes.Add(new WordShape(x, 164, gaps[i], 9.5, true));
        }

        shapes.Add(new PathShape([new Spot(54, 140), new Spot(462, 140)], 0.5));
        for (var i = 0; i < 7; i++)
        {
            shapes.Add(i == 3 ? new BoxShape(258 - 8, 160 - 8, 16, 16, Tone.White, 1.2) : new CircleShape(102 + (52 * i), 160, 8.5));
        }

        shapes.Add(new CircleShape(206, 188, 8.5, Tone.Middle));
        shapes.Add(new WordShape(192, 191, "back", 8.5, Align: Align.Right));
        shapes.Add(new CircleShape(258, 188, 8.5));
        shapes.Add(new WordShape(272, 191, "QB", 8.5, Align: Align.Left));
        shapes.Add(new PathShape([new Spot(258, 10), new Spot(258, 150)], 0.4, Dash.Dashed));
        shapes.Add(new WordShape(40, 12, "To the back's side 34%", 10.5, true, Align.Left));
        shapes.Add(new WordShape(478, 12, "Away from the back 66%", 10.5, true, Align.Right));
        return new Diagram(516, 200, shapes, "Runs by gap: most hit A and B on the side away from the back.");
    }

    private static Diagram Small()
    {
        var shapes = new List<Shape>();
        int[] runs = [0, 0, 1, 3, 10, 9, 1, 1];
        for (var i = 0; i < 8; i++)
        {
            var x = 14 + (19.5 * i);
            shapes.Add(new BoxShape(x - 5, 50 - (runs[i] * 4), 10, runs[i] * 4, Tone.Dark, 0));
            shapes.Add(new WordShape(x, 46 - (runs[i] * 4), Figures.Count(runs[i]), 8.5, true));
            shapes.Add(new WordShape(x, 63, "DCBAABCD"[i].ToString(), 7.5, true));
        }

        shapes.Add(new PathShape([new Spot(4, 50), new Spot(160, 50)], 0.5));
        return new Diagram(164, 68, shapes, "Counts by gap.");
    }

    private static Diagram Card()
    {
        var shapes = new List<Shape> { new PathShape([new Spot(0, 180), new Spot(516, 180)], 0.4, Dash.Fine) };
        for (var i = 0; i < 6; i++)
        {
            var x = 118 + (52 * i);
            shapes.Add(i == 2 ? new BoxShape(x - 11, 192, 22, 22, Tone.White, 1.3) : new CircleShape(x, 203, 12, Tone.White, 1.3));
            shapes.Add(new WordShape(x + 26, 207, "BAABCD"[i].ToString(), 12, true));
        }

        foreach (var (x, y, name) in new[] { (75.0, 160.0, "J"), (132, 160, "E"), (222, 160, "N"), (308, 160, "T"), (410, 160, "S"), (188, 92, "W"), (258, 92, "M"), (430, 54, "R"), (156, 12, "F") })
        {
            shapes.Add(new WordShape(x, y, name, 17, true));
        }

        shapes.Add(new PathShape([new Spot(196, 100), new Spot(232, 132), new Spot(248, 188)], 2.2, End: Cap.Arrow));
        shapes.Add(new PathShape([new Spot(268, 96), new Spot(324, 118), new Spot(344, 188)], 2.2, End: Cap.Arrow));
        shapes.Add(new PathShape([new Spot(118, 216), new Spot(130, 240), new Spot(300, 240), new Spot(352, 150)], 1, Dash.Dashed, Cap.Flat));
        shapes.Add(new PathShape([new Spot(180, 262), new Spot(212, 280), new Spot(270, 276), new Spot(362, 214), new Spot(362, 168)], 1.8, Dash.Dotted, Cap.Arrow));
        shapes.Add(new CircleShape(168, 258, 12, Tone.Middle, 1.3));
        shapes.Add(new WordShape(168, 284, "back", 8.5));
        return new Diagram(516, 290, shapes, "Tight front against counter: Will through the A gap, Mike in C, Sam squeezes.");
    }

    private static Table Ledger() => new(
        [
            new Column("Gap", 0, 54),
            new Column("Fitter", 58, 60),
            new Column("How", 124, 150),
            new Column("Counter hit here, of 17", 284, 70) { Axis = StripAxis.OwnBaselines() },
            new Column("", 364, 20, Align.Right),
            new Column("If he is late", 404, 112),
        ],
        [.. new[] { ("C away", "Jack", 0), ("B away", "End", 1), ("A to", "Will", 2), ("C to", "Mike", 6) }.Select(row => new TableRow(
            Cells.Name(row.Item1), Cells.Name(row.Item2), Cells.Text("Run through behind the nose"), Cells.Strip(DemoBooklet.Share(row.Item3, 17)), Cells.Count(row.Item3), Cells.Text("Nose turns it")))])
    { RowHeight = 22.5 };

    private static Plot Habit(int i)
    {
        int[] counts = [18 + i, 20, 38 - i, 36];
        int[] plays = [74, 69, 76, 67];
        var dots = counts.Select((count, game) =>
        {
            var share = DemoBooklet.Share(count, plays[game]);
            return new PlotDot(game + 1, share.Value!.Value, share.Likely!.Value.Low, share.Likely.Value.High) { Label = $"{count}/{plays[game]}", Solid = i < 2 && game == 3 };
        });
        return new Plot(new PlotAxis(.5, 4.5, []), new PlotAxis(0, 1, [new Tick(0, "0"), new Tick(.5, "50"), new Tick(1, "100")]), 76, "Rate by game.")
        {
            Bands = [new PlotBand(.33, .45, Upright: false)],
            Rules = [new PlotRule(.39, Upright: false, "39%")],
            Dots = [.. dots],
            NameWidth = 28,
        };
    }
}
