using System.CommandLine;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Situations;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>The front check: which front against this run game.</summary>
internal static class FrontsCommand
{
    public static Command Create()
    {
        var matrix = new Option<bool>("--matrix") { Description = "Every front against every run scheme and side: rating, film, both, and the gap ledger." };
        var breakEven = new Option<bool>("--break-even") { Description = "For each pair of fronts, the share of a run family at which the answer turns." };
        var card = new Option<bool>("--card") { Description = "The front card: situation, their call odds, our front, how sure, second choice." };
        var film = new Option<string?>("--film") { Description = "Charts of the snaps our own defense faced: what our fronts gave up there counts too.", HelpName = "CHARTS" };
        var command = new ChartCommand(
            "fronts",
            "The front check: what each front of the plan allows against the runs they call, and how sure that is.",
            "sample-logs/port-halden",
            "sample-logs/port-halden --break-even",
            "sample-logs/port-halden --matrix --format csv -o matrix.csv",
            "sample-logs/port-halden --film sample-logs/our-team/defense",
            "sample-logs/port-halden --only back_side=weak")
        { matrix, breakEven, card, film };
        command.Validators.Add(result =>
        {
            if (((bool[])[result.GetValue(matrix), result.GetValue(breakEven), result.GetValue(card)]).Count(asked => asked) > 1)
            {
                result.AddError("--matrix, --break-even and --card are three tables; ask for one.");
            }
        });
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(
            common.Read(parsed),
            parsed.GetValue(film),
            parsed.GetValue(matrix) ? Matrix : parsed.GetValue(breakEven) ? BreakEven : parsed.GetValue(card) ? Card : Ranking));
        return command;
    }

    private static int Run(Request request, string? film, Func<FrontStudy, OutputTable> table)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request);
        var study = FrontStudy.Of(week, studied, request.Seed, film is null ? null : OwnFilm(request, film));
        OutputFile.Write(request.Output, TableText.Write(table(study), request.Format));
        if (!request.Quiet && request.Format == OutputFormat.Text)
        {
            Console.Error.WriteLine($"{study.Check.Ranking.Verdict}. Ratings assume equal players and correct technique: they rank questions for the staff, they do not choose the call.");
        }

        return ProblemReport.Write(week.With(study.Plan.Problems), studied, request.Quiet);
    }

    private static PlayLog OwnFilm(Request request, string charts)
    {
        var own = request with { Charts = [charts], Week = null, Only = [] };
        return ChartedWeek.From(own).Choose(own, Unit.Defense).Plays;
    }

    private static OutputTable Ranking(FrontStudy study) => new(
        ["front", "success_allowed", "low", "high", "probability_best", "rank"],
        [.. study.Check.Ranking.Ranks.Select(r => (object?[])[r.Front, r.SuccessAllowed, r.Low, r.High, r.ProbabilityBest, r.Rank])]);

    private static OutputTable Matrix(FrontStudy study) => new(
        ["front", "run_scheme", "side", "plays", "successes", "prior", "success_allowed", "low", "high", "ledger"],
        [
            .. study.Check.Matrix.Cells.SelectMany(row => row).Select(c => (object?[])
                [c.Front, c.RunScheme, c.Side.Word(), c.Plays, c.Successes, c.Prior, c.SuccessAllowed, c.Low, c.High, c.Ledger]),
        ]);

    private static OutputTable BreakEven(FrontStudy study) => new(
        ["front_a", "front_b", "family", "share_now", "low", "high", "break_even_share", "better_below", "better_above"],
        [
            .. study.Check.BreakEvens.Select(b => (object?[])
                [b.FrontA, b.FrontB, b.Family, b.ShareNow, b.Low, b.High, b.BreakEvenShare, b.BetterBelow, b.BetterAbove]),
        ]);

    private static OutputTable Card(FrontStudy study) => new(
        ["situation", "plays", "run_share", "low", "high", "top_runs", "front", "success_allowed", "probability_best", "verdict", "second", "cost"],
        [
            .. study.Card().Select(c => (object?[])
            [
                c.Situation, c.Plays, c.RunShare, c.RunShareRange.Low, c.RunShareRange.High, string.Join(", ", c.TopRuns.Select(t => $"{t.Run} {t.Plays}")),
                c.Front, c.SuccessAllowed, c.Sure, c.Verdict, c.Second, c.Cost,
            ]),
        ]);
}
