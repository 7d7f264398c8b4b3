using System.CommandLine;
using System.Globalization;
using System.Text;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings.Reviews;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>A booklet's saved findings against the chart of the game then played.</summary>
internal static class ReviewCommand
{
    public static Command Create()
    {
        var command = new ChartCommand(
            "review",
            "A booklet's saved findings against the chart of the game then played: what held, what broke. Name findings (.json), then their game's chart; several pairs make a season.",
            "port-halden.findings.json games/port-halden.csv",
            "port-halden.findings.json games/port-halden.csv --only quarter=1,2",
            "week-1.findings.json week-1.csv week-2.findings.json week-2.csv --format csv -o season.csv");
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed)));
        return command;
    }

    private static int Run(Request request)
    {
        var pairs = Pairs(request.Charts);
        var reviews = new List<Review>();
        var code = ExitCode.Done;
        foreach (var (saved, charts) in pairs)
        {
            var (review, problems) = One(request with { Charts = charts }, SavedFile.Read(saved));
            reviews.Add(review);
            code = Math.Max(code, problems);
        }

        var whole = reviews.Count == 1 ? reviews[0] : Review.Of(reviews, request.Level ?? 0.95);
        OutputFile.Write(request.Output, request.Format == OutputFormat.Text ? Text(whole) : TableText.Write(Table(whole), request.Format));
        return code;
    }

    private static (Review Review, int Code) One(Request request, SavedFindings saved)
    {
        var week = ChartedWeek.From(request);
        week = week with { Week = week.Week with { Subject = saved.Subject } };
        var studied = week.Choose(request, saved.Unit == "defense" ? Breakdown.Situations.Unit.Defense : Breakdown.Situations.Unit.Offense);
        var plan = FrontPlan.Open(week.Folder);
        var film = FilmRow.Of(RunSample.Of(studied.Plays, plan.Book), saved.Level);
        var review = Review.Of(saved, studied.Plays, [.. film.Where(row => row.RunScheme.Length == 0).Select(row => (row.Front, new Tally(row.Successes, row.Plays)))]);
        return (review, ProblemReport.Write(week, studied, request.Quiet));
    }

    /// <summary>Findings, each with the charts named after it.</summary>
    private static List<(string Saved, IReadOnlyList<string> Charts)> Pairs(IReadOnlyList<string> named)
    {
        var pairs = new List<(string Saved, IReadOnlyList<string> Charts)>();
        foreach (var path in named)
        {
            if (Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase))
            {
                pairs.Add((path, []));
            }
            else if (pairs.Count > 0)
            {
                pairs[^1] = (pairs[^1].Saved, [.. pairs[^1].Charts, path]);
            }
            else
            {
                throw new CommandException($"{path}: name the saved findings (.json) first, then the chart of the game.");
            }
        }

        return pairs.FirstOrDefault(pair => pair.Charts.Count == 0) is { Saved: { } alone }
            ? throw new CommandException($"{alone}: name the chart of the game after it.")
            : pairs;
    }

    private static string Text(Review review)
    {
        var text = new StringBuilder();
        foreach (var claim in review.Claims.OrderByDescending(c => c.Game.Plays))
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"{Word(claim.Verdict),-13}  {claim.Claim.Words}: said {Percent(claim.Claim.Expected)}, usual {Percent(claim.Claim.Usual)}; in the game {claim.Game}\n");
        }

        _ = text.Append(CultureInfo.InvariantCulture, $"\n{review.Held} claims held, {review.Broke} broke, {review.TooFew} had too few snaps (under {ReviewedClaim.FewestSnaps}).\n");
        foreach (var band in review.Bands)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"said {Percent(band.Low)} to {Percent(band.Low + 0.1)} ({band.Claims} claims): said {Percent(band.Said)}, happened {Percent(band.Game.Share!.Value)} ({band.Game}; likely {Percent(band.Range.Low)}–{Percent(band.Range.High)}){(band.IsAsSaid ? "" : ": not as said")}\n");
        }

        foreach (var front in review.Fronts)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"{front.Saved.Front}: expected to allow {Percent(front.Saved.SuccessAllowed)}, allowed {front.Game} runs (likely {Percent(front.Range.Low)}–{Percent(front.Range.High)}){(front.IsAsSaid ? "" : ": not as expected")}\n");
        }

        return text.ToString();
    }

    private static OutputTable Table(Review review) => new(
        ["kind", "situation", "outcome", "said", "said_low", "said_high", "usual", "said_plays", "plays", "count", "share", "low", "high", "verdict"],
        [
            .. review.Claims.Select(c => (object?[])
            [
                "claim", c.Claim.Situation, $"{c.Claim.Column}={c.Claim.Outcome}", c.Claim.Expected, c.Claim.Low, c.Claim.High, c.Claim.Usual, c.Claim.Plays, c.Game.Plays, c.Game.Count, c.Game.Share, null, null, Word(c.Verdict),
            ]),
            .. review.Bands.Select(b => (object?[])
            [
                "band", "", "", b.Said, b.Low, b.Low + 0.1, null, null, b.Game.Plays, b.Game.Count, b.Game.Share, b.Range.Low, b.Range.High, b.IsAsSaid ? "as said" : "not as said",
            ]),
            .. review.Fronts.Select(f => (object?[])
            [
                "front", f.Saved.Front, "run success", f.Saved.SuccessAllowed, f.Saved.Low, f.Saved.High, null, null, f.Game.Plays, f.Game.Count, f.Game.Share, f.Range.Low, f.Range.High, f.IsAsSaid ? "as said" : "not as said",
            ]),
        ]);

    private static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Held => "held",
        Verdict.Broke => "broke",
        _ => "too few snaps",
    };

    private static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
}
