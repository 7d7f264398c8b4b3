using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Tests.Demo;

internal static class DemoBrief
{
    public static readonly Page Page = new("brief", "Brief", "The week in five sentences.")
    {
        Kind = PageKind.Brief,
        Blocks =
        [
            new KeyFigures(
            [
                new KeyFigure("Run share", DemoBooklet.Share(149, 286)),
                new KeyFigure("Plays that gained enough", DemoBooklet.Share(139, 286)),
                new KeyFigure("Long plays, 12+ / 16+", DemoBooklet.Share(30, 286)),
                new KeyFigure("Third downs converted", DemoBooklet.Share(30, 60)),
                new KeyFigure("Two-point tries run", DemoBooklet.Share(3, 4)),
            ]),
            new EvidenceList(
                "What they do, in five sentences",
                [
                    new Evidence("With the back set to the weak side, they run.", DemoBooklet.Share(44, 62, .52), "plays", "team run rate", RichText.Plain("Steady: 62–79% in all four games. ") + RichText.PageOf("formations") + "."),
                    new Evidence("On third and 3 or more, they throw.", DemoBooklet.Share(42, 47, .48), "plays", "team pass rate", RichText.Plain("The 5 runs were all zone. ") + RichText.PageOf("down-distance") + "."),
                    new Evidence("On second or third and short, expect a run.", DemoBooklet.Share(29, 31, .52), "plays", "team run rate", "Inside zone 13, power 6 of the 29."),
                    new Evidence("Runs go away from an offset back.", DemoBooklet.Share(62, 94, .5), "runs, back offset", "even split", "Zone leads it; power and counter go to his side."),
                    new Evidence("After a long gain they may slow down.", DemoBooklet.Share(16, 30, .5), "plays", "even split", "Could be even."),
                ]),
            new SideBySide(
            [
                new Side(330,
                [
                    new Heading("Front to start in"),
                    Paragraph.Lead(RichText.Strong("Start in Tight.") + " It is the best of five fronts against their run mix in 78 of 100 re-draws of the charts."),
                    new Paragraph(RichText.Plain("It stays best until gap schemes pass 38% of runs. They are at 31% (46 of 149; likely 24–39%). Next: Under. ") + RichText.PageOf("front-check") + "."),
                ]),
                new Side(0,
                [
                    new Heading("Chance of being best"),
                    new Bars([new Bar("Tight", .78, true), new Bar("Under", .15), new Bar("Bear", .05), new Bar("Over", .02), new Bar("Odd", .004)]),
                ]),
            ]),
            new Heading("How good the charts are"),
            new Paragraph(RichText.Strong("Good enough to act on.") + " 282 of 286 plays are complete. Two charters agreed on 95% of calls (571 of 600 on 60 re-charted plays; likely 93–97%). The back's side was unseen on 9 plays."),
        ],
    };
}
