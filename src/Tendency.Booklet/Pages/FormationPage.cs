using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>Does the formation, or the back's spot in it, say run or pass?</summary>
internal static class FormationPage
{
    private const int MostFormations = 8;

    public static Page? Compose(Study study)
    {
        var charted = study.Plays.Where(row => study.Plays.Category(ColumnNames.Formation)[row].Length > 0);
        var formations = CrossTab.Values(charted, ColumnNames.Formation);
        var kept = formations.Where(formation => formation.Count >= Share.FewestPlays).Take(MostFormations)
            .Select(formation => new Situation(Words.Title(formation.Value), "", charted.Where(ColumnNames.Formation, formation.Value)) { Spoken = $"from {Words.Plain(formation.Value)}" })
            .ToArray();
        if (kept.Length == 0)
        {
            return null;
        }

        var backs = charted.IsCharted(ColumnNames.BackSide);
        var spots = backs ? [.. BackSpots.Of(charted)] : Array.Empty<Situation>();
        return new Page("formation", backs ? "Formation and back" : "Formation", Headline.Of(
            CallFinding.Of(study, kept, ""), CallFinding.Of(study, spots, ""), kept.Any(row => CallVerdict.Of(study, row.Plays).Doing is not null) ? "" : "No formation alone gives run or pass away."))
        {
            Deck = $"Run share of each formation{(backs ? " by where the back stands (gray circles: his spots)" : " by down")}. Line: team rate. Strength is to the right in every picture.",
            Blocks =
            [
                .. Summary(study, charted, spots),
                new SmallMultiples([.. Panels(study, kept, backs), Taken(study, kept, spots)]),
                .. Rest(study, charted, formations, kept),
            ],
        };
    }

    private static IEnumerable<Block> Summary(Study study, PlayLog charted, Situation[] spots)
    {
        if (spots.Length == 0)
        {
            yield break;
        }

        yield return new Heading("All formations", "run share by where the back stands");
        yield return new Table(
            [
                new Column("Back", 0, 110),
                new Column("Plays", 110, 40, Align.Right),
                new Column("", 170, 200) { Axis = new StripAxis(0, 1, [0, .25, .5, .75, 1]) { Line = study.Runs.Share, LineName = $"team {Figures.Percent(study.Runs.Share ?? 0)}" } },
                new Column("Runs, likely", 384, 132),
            ],
            [.. spots.Select(spot =>
            {
                var run = study.RunShare(spot.Plays);
                var name = spot.Remark.Length == 0 ? spot.Name : $"{spot.Name} ({spot.Remark})";
                return new TableRow(Cells.Name(name), Cells.Count(run.Plays), Cells.Strip(run), new ShareCell(run) { Form = ShareForm.OneLine }) { Plays = study.ListOf(spot.Plays) };
            })])
        { Caption = "Run share by the back's side" };
    }

    private static IEnumerable<Panel> Panels(Study study, Situation[] formations, bool backs)
    {
        const int Across = 3;
        return formations.Chunk(Across).SelectMany(row =>
        {
            var height = row.Max(formation => FormationPicture.HeightOf(Family(formation)));
            return row.Select(formation => PanelOf(study, formation, backs, height));
        });
    }

    private static string Family(Situation formation) => CrossTab.Values(formation.Plays, ColumnNames.FormationFamily).Select(value => value.Value).FirstOrDefault("");

    private static Panel PanelOf(Study study, Situation formation, bool backs, double pictureHeight)
    {
        var run = study.RunShare(formation.Plays);
        string[] spots = ["weak", "middle", "strong"];
        var seen = spots.Where(spot => formation.Plays.Where(ColumnNames.BackSide, spot).Rows > 0).ToArray();
        var body = new List<Block>();
        if (FormationPicture.Of(Family(formation), seen, pictureHeight) is { } picture)
        {
            body.Add(picture);
        }

        body.Add(Strips(study, formation.Plays, backs));
        var top = CrossTab.Values(formation.Plays, ColumnNames.RunScheme).Take(2).Select(scheme => $"{Words.Plain(scheme.Value)} {scheme.Count}").ToArray();
        if (top.Length > 0)
        {
            body.Add(Paragraph.Note($"Runs: {string.Join(", ", top)}"));
        }

        return new Panel(formation.Name, $"run {Figures.Percent(run)}{(run.TooFew || run.None ? "" : $", {Figures.CountOf(run)}")}", body);
    }

    private static Table Strips(Study study, PlayLog plays, bool backs)
    {
        var rows = backs
            ? BackSpots.Of(plays).Select(spot => (spot.Name, spot.Plays))
            : new[] { ("1", "1st"), ("2", "2nd"), ("3", "3rd") }.Select(down => (Name: down.Item2, Plays: plays.Where(ColumnNames.Down, down.Item1)));
        return new Table(
            [
                new Column("", 0, 40),
                new Column("", 42, 56) { Axis = StripAxis.Shares("", study.Runs.Share) },
                new Column("", 102, 62),
            ],
            [.. rows.Select(row =>
            {
                var run = study.RunShare(row.Plays);
                return new TableRow(Cells.Text(row.Name), Cells.Strip(run), Cells.ShareLine(run)) { Plays = study.ListOf(row.Plays) };
            })])
        { Bare = true, Caption = "Run share" };
    }

    private static Panel Taken(Study study, Situation[] formations, Situation[] spots)
    {
        var lines = new List<Block>();
        var weak = spots.FirstOrDefault(spot => spot.Name == "Weak");
        var strong = spots.FirstOrDefault(spot => spot.Name == "Strong");
        if (weak is not null && strong is not null && Apart(study, weak.Plays, strong.Plays) is { } apart)
        {
            lines.Add(new Paragraph(apart, TextStyle.Deck));
        }

        var sure = formations.Where(row => CallVerdict.Of(study, row.Plays).Doing is not null).ToArray();
        var rest = formations.Length - sure.Length;
        lines.Add(new Paragraph(
            sure.Length == 0
                ? RichText.Strong("No formation tells by itself.") + $" All {Words.Number(formations.Length)} could be the team rate."
                : RichText.Strong($"{Words.Capital(Words.Counted(sure.Length, "formation"))} {(sure.Length == 1 ? "tells" : "tell")} by itself.".Replace("tell by itself", "tell by themselves", StringComparison.Ordinal))
                    + (rest == 0 ? "" : $" The other {Words.Number(rest)} could be the team rate."),
            TextStyle.Deck));
        return new Panel("What to take from it", "", lines);
    }

    /// <summary>Weak against strong with the range of the gap (Newcombe), said only when it leaves out zero.</summary>
    private static RichText? Apart(Study study, PlayLog weak, PlayLog strong)
    {
        var (one, other) = (study.RunShare(weak), study.RunShare(strong));
        if (one.Plays < Share.FewestPlays || other.Plays < Share.FewestPlays)
        {
            return null;
        }

        var gap = study.Ranges.OfDifference(weak, strong, ColumnNames.Call, "run");
        if (gap.Contains(0))
        {
            return RichText.Strong("Weak or strong makes no sure difference:") + $" {Figures.Percent(one)} and {Figures.Percent(other)} run.";
        }

        var points = Math.Abs((one.Value!.Value - other.Value!.Value) * 100);
        var (low, high) = gap.Low > 0 ? (gap.Low, gap.High) : (-gap.High, -gap.Low);
        return RichText.Strong("Call it from the back.")
            + $" Weak: {Figures.Percent(one)} run. Strong: {Figures.Percent(other)}. The gap is {Figures.Number(points, 0)} points, likely {Figures.Number(low * 100, 0)} to {Figures.Number(high * 100, 0)}.";
    }

    private static IEnumerable<Block> Rest(Study study, PlayLog charted, IReadOnlyList<(string Value, int Count)> formations, Situation[] kept)
    {
        var unseen = study.Plays.Rows - charted.Rows;
        var others = formations.Count - kept.Length;
        var note = Words.Sentences(
            others == 0 ? "" : $"Others: {Words.Figured(formations.Sum(formation => formation.Count) - kept.Sum(row => row.Plays.Rows), "play")} in {Words.Counted(others, "more formation")}.",
            unseen == 0 ? "" : $"Formation not charted on {Words.Figured(unseen, "play")}.");
        if (note.Length > 0)
        {
            yield return Paragraph.Note(note);
        }
    }
}
