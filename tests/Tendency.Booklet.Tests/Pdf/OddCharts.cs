using Tendency.Booklet.Pages;
using Tendency.Booklet.Tests.Pages;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Booklet.Tests.Pdf;

/// <summary>A chart of an odd shape.</summary>
/// <param name="Study">Its counted plays and findings, made anew at each call.</param>
/// <param name="LongWords">Holds words longer than their places, or counts that leave words less room: these may be cut with ….</param>
/// <param name="Scarce">So little is charted that any page may stay half empty.</param>
internal sealed record OddChart(Func<Study> Study, bool LongWords = false, bool Scarce = false);

/// <summary>Charts as nobody expects them, made of the sample games.</summary>
internal static class OddCharts
{
    private const string Sixty = "Donaudampfschifffahrtsgesellschaftskapitänsmützenformationen";
    private const string Scripts = "漢字 Ñandú é العربية 🏈 e\u0301";

    private static readonly string[] s_required = [ColumnNames.Game, ColumnNames.Play, ColumnNames.Down, ColumnNames.Distance, ColumnNames.Call];

    private static readonly string[] s_words = ["game", "offense", "defense", "personnel", "formation", "motion", "tempo", "run_scheme", "pass_concept", "drop", "protection", "front", "coverage", "target", "clip", "note"];

    private static readonly Dictionary<string, string[]> s_groups = new()
    {
        ["no situation"] = ["series", "quarter", "clock", "margin"],
        ["no ball spot"] = ["ball_on", "hash"],
        ["no formation"] = ["personnel", "formation", "strength", "attached", "wing"],
        ["no back"] = ["back_set", "back_side"],
        ["no motion and tempo"] = ["motion", "tempo"],
        ["no run columns"] = ["run_scheme", "run_side", "gap", "read"],
        ["no pass columns"] = ["pass_concept", "drop", "protection", "slide_side", "target"],
        ["no defense"] = ["front", "coverage", "shell", "rushers", "box", "pressure_side"],
        ["no outcome"] = ["gain", "result", "touchdown"],
    };

    public static IReadOnlyDictionary<string, OddChart> All { get; } = new Dictionary<string, OddChart>
    {
        ["one game"] = new(() => Games(1)),
        ["twelve games"] = new(() => Games(12, rows: 30), LongWords: true),
        ["a play a game"] = new(() => Games(12, rows: 1), Scarce: true),
        ["eleven plays"] = new(() => Games(1, rows: 11), Scarce: true),
        ["three thousand plays"] = new(() => Games(44, rows: 200, searched: false), LongWords: true),
        ["required columns"] = new(() => Games(2, keep: s_required.Contains), Scarce: true),
        ["nothing but required cells"] = new(() => Games(2, (header, cell) => s_required.Contains(header) ? cell : ""), Scarce: true),
        ["all runs"] = new(() => Games(2, Call("run", "rush"))),
        ["all passes"] = new(() => Games(2, Call("pass", "complete"))),
        ["every call undecided"] = new(() => Games(2, Call("rpo", ""))),
        ["forty formations"] = new(() => Games(3, Counted("formation", i => $"Look {i % 40}"))),
        ["one formation"] = new(() => Games(2, Cell("formation", "doubles"))),
        ["sixty-letter words"] = new(() => Games(2, (header, cell) => s_words.Contains(header) && cell.Length > 0 ? Sixty + cell : cell), LongWords: true),
        ["many long words"] = new(() => Games(2, (header, cell) => s_words.Contains(header) && cell.Length > 0 ? $"{cell} that nobody would ever say twice in a huddle {cell}" : cell), LongWords: true),
        ["other scripts"] = new(() => Games(2, (header, cell) => s_words.Contains(header) && cell.Length > 0 ? $"{Scripts} {cell}" : cell, week: WeekPlan.Default with { Opponent = Scripts }), LongWords: true),
        ["commas, quotes, formulas, markup"] = new(() => Games(2, (header, cell) => header is "game" or "formation" or "target" or "run_scheme" && cell.Length > 0 ? $"=\"{cell}\", <b>&amp;\n'" : cell), LongWords: true),
        ["opponent of eighty letters"] = new(() => Games(1, week: WeekPlan.Default with { Opponent = "The United Preparatory Academy of Port Halden and the Nine Surrounding Townships" }), LongWords: true),
        ["opponent of one long word"] = new(() => Games(1, week: WeekPlan.Default with { Opponent = Sixty + Sixty }), LongWords: true),
        ["no yard gained"] = new(() => Games(2, Cell("gain", "0"))),
        ["huge gains"] = new(() => Games(2, Cell("gain", "99"))),
        ["huge losses"] = new(() => Games(2, Cell("gain", "-99"))),
        ["only first downs"] = new(() => Games(2, Cell("down", "1"))),
        ["only third downs"] = new(() => Games(2, Cell("down", "3"))),
        ["only fourth downs"] = new(() => Games(2, Cell("down", "4"))),
        ["only tries but one"] = new(() => Games(1, Counted("down", i => i == 0 ? "1" : "try")), Scarce: true),
        ["long distances"] = new(() => Games(2, Cell("distance", "99"))),
        ["always goal to go"] = new(() => Games(2, (header, cell) => header switch { "distance" => "goal", "ball_on" => "opp 1", _ => cell })),
        ["no offset back"] = new(() => Games(2, Cell("back_side", "middle"))),
        ["back never seen"] = new(() => Games(2, Cell("back_side", "none"))),
        ["only overtime"] = new(() => Games(2, Cell("quarter", "5"))),
        ["always behind by far"] = new(() => Games(2, Cell("margin", "-77"))),
        ["team names equal"] = new(() => Games(2, (header, cell) => header is "offense" or "defense" ? "Port Halden" : cell)),
        ["a name inside a name"] = new(() => Games(2, (header, cell) => header switch { "defense" => "Port", "game" => cell + " Port Halden", _ => cell })),
        ["a word a play"] = new(() => Games(2, Counted(["formation", "run_scheme", "pass_concept", "motion"], i => $"Word {i}")), LongWords: true),
        ["every cell the same"] = new(() => Games(2, (header, cell) => header switch { "play" or "game" => cell, "down" => "2", "distance" => "7", "call" => "run", "gain" => "4", "result" => "rush", "clip" => "", _ => cell.Length > 0 ? First(header) : "" })),
        ["games of one name"] = new(() => Games(3, Cell("game", "Port"))),
        ["a defense"] = new(() => Games(3, (header, cell) => header switch { "offense" => cell.Length > 0 ? "Calder Bay" : "", "defense" => "Port Halden", _ => cell }, unit: Unit.Defense)),
        ["level of a half"] = new(() => Games(2, week: WeekPlan.Default with { Level = .5 })),
        ["level of 99.9%"] = new(() => Games(2, week: WeekPlan.Default with { Level = .999 })),
    }.Concat(s_groups.Select(group => KeyValuePair.Create(group.Key, new OddChart(() => Games(2, keep: header => !group.Value.Contains(header)))))).ToDictionary();

    private static Study Games(int count, Func<string, string, string>? change = null, Func<string, bool>? keep = null, WeekPlan? week = null, Unit unit = Unit.Offense, int rows = 40, bool searched = true)
    {
        var files = Studies.Files();
        var charts = Enumerable.Range(0, count).Select(i => Studies.Rewrite(
            string.Join('\n', files[i % files.Length].Split('\n').Take(rows + 1)),
            (header, cell) => (change ?? Same)(header, header == "game" && i >= files.Length ? $"Game {i + 1}" : cell),
            keep ?? (_ => true)));
        return WithFindings(Studies.Of(week ?? WeekPlan.Default, unit, [.. charts]), searched);
    }

    /// <summary>What the command gathers, with as few draws as show a shape; not <paramref name="searched"/> for tells and guesses where that would take most of the time.</summary>
    private static Study WithFindings(Study study, bool searched)
    {
        var options = new FrontOptions { Draws = 300, CardDraws = 100 };
        var check = FrontCheck.Of(study.Plays, FrontBook.BuiltIn, [.. FrontBook.BuiltIn.Fronts.Take(5)], options);
        string[] outcomes = [ColumnNames.Call, ColumnNames.RunTo, ColumnNames.SlideTo];
        return study with
        {
            Fronts = check,
            FrontCard = FrontCard.Of(study.Plays, check, options),
            Tells = [.. outcomes.Where(outcome => searched && study.Plays.IsCharted(outcome)).Select(outcome => Tells.Search(study.Plays, outcome, TellOptions.Default with { Shuffles = 0 }))],
            Guess = searched ? Guess.Run(study.Plays, ColumnNames.Call, GuessOptions.Default with { Trees = 5, Weighs = false }) : null,
            Steadiness = SteadyHabits.Follow(study.Plays, Habit.Usual, seed: 1, draws: 99),
            Audit = Audit.Run(study.Charts, study.All, study.Week, Glossary.BuiltIn),
        };
    }

    private static string Same(string header, string cell) => cell;

    private static Func<string, string, string> Cell(string column, string value) => (header, cell) => header == column ? value : cell;

    private static Func<string, string, string> Call(string call, string result) => (header, cell) => header switch { "call" => call, "result" => result, _ => cell };

    private static Func<string, string, string> Counted(string column, Func<int, string> value) => Counted([column], value);

    private static Func<string, string, string> Counted(string[] columns, Func<int, string> value)
    {
        var count = 0;
        return (header, cell) => columns.Contains(header) ? value(count++) : cell;
    }

    private static string First(string header) => Studies.Files()[0].Split('\n') is [var heads, var first, ..] ? first.Split(',')[Array.IndexOf(heads.Split(','), header)] : "";
}
