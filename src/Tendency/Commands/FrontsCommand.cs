using System.CommandLine;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Situations;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>The front check: which front against this run game.</summary>
internal static class FrontsCommand
{
    private static readonly (string Option, string Description, Func<FrontStudy, (OutputTable Table, string Remark)> Table)[] s_tables =
    [
        ("--matrix", "Every front against every run scheme and side: rating, film, both, and the gap ledger.", FrontTables.Matrix),
        ("--break-even", "For each pair of fronts, the share of a run family at which the answer turns.", FrontTables.BreakEven),
        ("--turns", "The break-even shares there are: how sure, and what the ratings alone would say.", FrontTables.Turns),
        ("--card", "The front card: situation, their call odds, our front, how sure, second choice.", FrontTables.Card),
        ("--ledger", "Who has each gap against the runs they have shown: at the snap, late, or nobody.", FrontTables.Ledger),
        ("--shells", "What two-deep, invert, cloud, buzz and man free change in the ledger.", FrontTables.Shells),
        ("--options", "How often reads, bash, options and throws off a defender ask for one man more, by situation.", FrontTables.Options),
        ("--extra-fitter", "Who has the second runner in each front and shell.", FrontTables.ExtraFitter),
        ("--agreement", "Where the gap ledger and the ratings point in opposite ways, and how far they agree in rank.", FrontTables.Agreement),
    ];

    // Schemes and sides make the mix, attached men the ledger, fronts the film.
    private static readonly string[] s_columns = [ColumnNames.RunScheme, ColumnNames.RunSide, ColumnNames.BackSide, ColumnNames.Attached, ColumnNames.Front];

    public static Command Create()
    {
        var film = new Option<string?>("--film") { Description = "Charts of the snaps our own defense faced: what our fronts gave up there counts too.", HelpName = "CHARTS" };
        var command = new ChartCommand(
            "fronts",
            "The front check: what each front of the plan allows against the runs they call, and how sure that is.",
            "sample-logs/port-halden",
            "sample-logs/port-halden --break-even",
            "sample-logs/port-halden --matrix --format csv -o matrix.csv",
            "sample-logs/port-halden --film sample-logs/our-team/defense",
            "sample-logs/port-halden --only back_side=weak");
        var asked = s_tables.Select(table => (Option: new Option<bool>(table.Option) { Description = table.Description }, table.Table)).ToArray();
        foreach (var (option, _) in asked)
        {
            command.Add(option);
        }

        command.Add(film);
        command.Validators.Add(result =>
        {
            if (asked.Count(table => result.GetValue(table.Option)) > 1)
            {
                result.AddError($"{string.Join(", ", s_tables.SkipLast(1).Select(table => table.Option))} and {s_tables[^1].Option} are different tables; ask for one.");
            }
        });
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(
            common.Read(parsed),
            parsed.GetValue(film),
            asked.Where(table => parsed.GetValue(table.Option)).Select(table => table.Table).FirstOrDefault(FrontTables.Ranking)));
        return command;
    }

    private static int Run(Request request, string? film, Func<FrontStudy, (OutputTable Table, string Remark)> tableOf)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request);
        var weights = WeekWeights.Of(week, studied, request);
        var study = FrontStudy.Of(week, studied, weights.Games, request.Seed, film is null ? null : OwnFilm(request, film));
        var (table, remark) = tableOf(study);
        OutputFile.Write(request.Output, TableText.Write(table, request.Format));
        NotCharted.Report(studied.Plays, s_columns, request.Quiet);
        if (!request.Quiet && request.Format == OutputFormat.Text)
        {
            Console.Error.WriteLine(remark);
        }

        weights.Say(studied, request.Quiet);
        return ProblemReport.Write(week.With(weights.Problems), studied, request.Quiet);
    }

    private static PlayLog OwnFilm(Request request, string charts)
    {
        var own = request with { Charts = [charts], Week = null, Only = [] };
        return ChartedWeek.From(own).Choose(own, Unit.Defense).Plays;
    }
}
