using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Weeks;

/// <summary>The week file's text to a plan. Every mistake is reported with line, column and the nearest valid key or value; the rest is used.</summary>
/// <remarks>
/// <code>
/// opponent = "Port Halden"        # name on the cover
/// subject = "Port Halden"         # whose snaps are studied
/// level = 0.95                    # level of every interval
/// half_life = 2                   # games; a game that old weighs half
/// like_our_defense = true         # games against the fronts of our plan weigh more; with half_life both weights multiply
/// rpo = "by result"               # or "run", "pass", "own class"
/// glossary = "our-words.csv"
/// corrections = "corrections.csv"
///
/// [[charts]]
/// file = "01-calder-bay.csv"
/// game = "Calder Bay"
/// date = 2026-10-24
/// tags = ["other quarterback"]
///
/// [headers]                       # our column = the staff's header
/// ball_on = "Yd Line"
///
/// [boundaries]
/// medium_most = 7
///
/// [[leave_out]]                   # all that is set must hold
/// why = "the game was decided"
/// quarter = 4
/// margin_beyond = 24
/// tempo = ["hurry"]               # any column or derived dimension
///
/// [plan]
/// fronts = ["tight", "over"]
/// fronts_file = "fronts.csv"
/// ratings_file = "ratings.csv"
/// prior_plays = 8
/// rating_step = 0.06
/// rush_step = 0.03
/// </code>
/// </remarks>
public static class WeekReader
{
    private const string LikeOurDefense = "like_our_defense";

    private static readonly string[] s_tables = ["charts", "headers", "boundaries", "leave_out", "plan"];

    private static readonly IReadOnlyList<(string Word, RpoCounting Counting)> s_rpo =
    [
        ("by result", RpoCounting.ByResult), ("run", RpoCounting.AsRun), ("pass", RpoCounting.AsPass), ("own class", RpoCounting.OwnClass),
    ];

    /// <param name="file">The file's name, for problems.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="names">Columns and dimensions the file may refer to.</param>
    public static WeekReading Read(string file, string text, KnownNames names)
    {
        var problems = new List<Problem>();
        var tree = WeekTree.From(file, WeekSyntax.Parse(file, text, problems), problems);
        var plan = Top(tree.Top) with
        {
            Charts = Charts(tree),
            Headers = Headers(tree.Table("headers"), names),
            Boundaries = BoundaryTable.Read(tree.Table("boundaries")),
            LeaveOut = [.. tree.Tables("leave_out").Select(table => LeaveOutTable.Read(table, names)).OfType<LeaveOut>()],
        };
        plan = Plan(tree.Table("plan"), plan);
        if (plan is { LikeOurDefense: true, Fronts: [] })
        {
            tree.Top.Report(WeekRules.MissingKey, LikeOurDefense, "true", "like_our_defense needs the fronts of our plan, and [plan] names none: all games count alike.", "fronts = [\"over\", \"under\"] under [plan]");
        }

        ReportUnknownTables(tree);
        return new WeekReading(plan, [.. problems.OrderBy(problem => problem.Place.Line).ThenBy(problem => problem.Place.Character)]);
    }

    private static WeekPlan Top(WeekTable top)
    {
        var word = top.Choice("rpo", [.. s_rpo.Select(pair => pair.Word)]);
        return WeekPlan.Default with
        {
            Opponent = top.Text("opponent") ?? "",
            Subject = top.Text("subject") ?? "",
            Level = top.Number("level", 0, 1, openEnds: true) ?? WeekPlan.Default.Level,
            HalfLifeGames = top.Number("half_life", 0, 1000) ?? 0,
            LikeOurDefense = top.Flag(LikeOurDefense) ?? false,
            LikeOurDefenseLine = top.Keys.Contains(LikeOurDefense, StringComparer.Ordinal) ? top.Line(LikeOurDefense) : 0,
            Rpo = s_rpo.FirstOrDefault(pair => pair.Word == word).Counting,
            GlossaryFile = top.FileName("glossary") ?? "",
            CorrectionsFile = top.FileName("corrections") ?? "",
        };
    }

    private static List<WeekChart> Charts(WeekTree tree)
    {
        var charts = new List<WeekChart>();
        foreach (var table in tree.Tables("charts"))
        {
            var said = table.Keys.Contains("file", StringComparer.Ordinal);
            var file = table.FileName("file");
            var chart = new WeekChart(file ?? "", table.Text("game") ?? "", table.Date("date"), table.Texts("tags") ?? []);
            table.ReportUnknown();
            if (file is null)
            {
                if (!said)
                {
                    table.Report(WeekRules.MissingKey, "", "", "This [[charts]] entry names no file; it is not used.", "file = \"name.csv\"");
                }
            }
            else if (charts.Exists(other => other.File == file))
            {
                table.Report(WeekRules.NamedTwice, "file", file, $"'{file}' is listed twice; it is read once.");
            }
            else
            {
                charts.Add(chart);
            }
        }

        return charts;
    }

    private static Dictionary<string, string> Headers(WeekTable table, KnownNames names)
    {
        var headers = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var key in table.Keys.Distinct(StringComparer.Ordinal).ToArray())
        {
            // [headers] says our column = your header; the other way round is the likely slip.
            if (!names.Columns.Contains(key, StringComparer.Ordinal))
            {
                continue;
            }

            if (table.Text(key) is { Length: > 0 } header)
            {
                if (headers.FirstOrDefault(pair => pair.Value == header).Key is { } other)
                {
                    table.Report(WeekRules.NamedTwice, key, header, $"The header '{header}' is mapped to {other} already; this line is not used.");
                }
                else
                {
                    headers.Add(key, header);
                }
            }
        }

        foreach (var key in table.Keys.Except(names.Columns, StringComparer.Ordinal).ToArray())
        {
            if (table.Texts(key) is [var value] && names.Columns.Contains(value, StringComparer.Ordinal))
            {
                table.Report(WeekRules.UnknownKey, key, value, $"[headers] says our column = your header; this line has them the other way round and has no effect.", $"{value} = \"{key}\"");
            }
            else
            {
                var nearest = NearestWord.In(names.Columns, key) ?? "";
                table.Report(WeekRules.UnknownKey, key, "", $"'{key}' is not a column of ours; the line has no effect.{(nearest.Length > 0 ? $" Did you mean '{nearest}'?" : "")}", nearest);
            }
        }

        return headers;
    }

    private static WeekPlan Plan(WeekTable table, WeekPlan plan)
    {
        var read = plan with
        {
            Fronts = table.Texts("fronts") ?? [],
            FrontsLine = table.Line("fronts"),
            FrontsFile = table.FileName("fronts_file") ?? "",
            RatingsFile = table.FileName("ratings_file") ?? "",
            PriorPlays = table.Number("prior_plays", 0, 10_000) ?? plan.PriorPlays,
            RatingStep = table.Number("rating_step", 0, 0.25) ?? plan.RatingStep,
            RushStep = table.Number("rush_step", 0, 0.25) ?? plan.RushStep,
        };
        table.ReportUnknown();
        return read;
    }

    private static void ReportUnknownTables(WeekTree tree)
    {
        foreach (var name in s_tables)
        {
            foreach (var value in tree.Top.Nodes(name))
            {
                var brackets = name is "charts" or "leave_out" ? $"[[{name}]]" : $"[{name}]";
                tree.Top.Report(WeekRules.WrongValue, name, value.ToString() ?? "", $"{name} is a table: write {brackets} on a line of its own and its keys below. The line has no effect.", brackets);
            }
        }

        tree.Top.ReportUnknown();
        foreach (var (name, at) in tree.Names.Where(pair => !s_tables.Contains(pair.Key, StringComparer.Ordinal)))
        {
            var nearest = NearestWord.In(s_tables, name) ?? "";
            var table = tree.Table(name);
            table.Report(WeekRules.UnknownKey, "", "", $"'{name}' is not a table of the week file; nothing under it has an effect. {(nearest.Length > 0 ? $"Did you mean '{nearest}'?" : $"Tables: {string.Join(", ", s_tables)}.")}", nearest);
        }
    }
}
