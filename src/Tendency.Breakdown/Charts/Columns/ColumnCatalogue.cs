using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Charts.Columns;

/// <summary>All columns a chart may have, in the order a chart writes them. To add a column: its name in <see cref="ColumnNames"/>, its line here.</summary>
public static class ColumnCatalogue
{
    private static readonly Dictionary<string, string> s_sideWords = new()
    {
        ["left"] = "L",
        ["right"] = "R",
        ["l"] = "L",
        ["r"] = "R",
        ["lt"] = "L",
        ["rt"] = "R",
        ["lf"] = "L",
    };

    private static readonly Dictionary<string, string> s_hashWords = new()
    {
        ["left"] = "L",
        ["right"] = "R",
        ["lt"] = "L",
        ["rt"] = "R",
        ["lf"] = "L",
        ["middle"] = "M",
        ["mid"] = "M",
        ["c"] = "M",
        ["center"] = "M",
    };

    private static readonly Dictionary<string, string> s_attachedWords = new()
    {
        ["left"] = "L",
        ["right"] = "R",
        ["lt"] = "L",
        ["rt"] = "R",
        ["b"] = "both",
        ["lr"] = "both",
        ["no"] = "none",
        ["n"] = "none",
        ["-"] = "none",
    };

    public static IReadOnlyList<ChartColumn> All { get; } =
    [
        new(Game, CellKind.Word, "One label a game.") { Required = true },
        Count(Play, 1, 100_000, "Order within the game, as on film.") with { Required = true },
        new(Offense, CellKind.Word, "Who has the ball."),
        new(Defense, CellKind.Word, "Who defends."),
        Count(Series, 1, 100_000, "Possession number."),
        Count(Quarter, 1, 5, "1 to 4; 5 is overtime."),
        new(Clock, CellKind.Clock, "Time left in the quarter, m:ss.") { Least = 0, Most = 900 },
        Count(Margin, -99, 99, "Offense's score minus defense's, before the snap."),
        new(Down, CellKind.Choice, "1 to 4; try = a two-point try.")
        {
            Required = true,
            Choices = ["1", "2", "3", "4", "try"],
            AlsoWritten = new Dictionary<string, string> { ["1st"] = "1", ["2nd"] = "2", ["3rd"] = "3", ["4th"] = "4", ["first"] = "1", ["second"] = "2", ["third"] = "3", ["fourth"] = "4", ["0"] = "try", ["2pt"] = "try" },
        },
        new(Distance, CellKind.Distance, "Yards to gain, 1 to 99, or goal.") { Required = true, Least = 1, Most = 99 },
        new(BallOn, CellKind.YardLine, "own 1 to own 49, 50, opp 49 to opp 1."),
        new(Hash, CellKind.Choice, "L, M or R, seen from behind the offense.") { Choices = ["L", "M", "R"], AlsoWritten = s_hashWords },
        new(Personnel, CellKind.Personnel, "Backs and tight ends: 11, 12, 21."),
        new(Formation, CellKind.Word, "The staff's word.") { GlossaryKind = "formation_family" },
        new(Strength, CellKind.Choice, "L or R.") { Choices = ["L", "R"], AlsoWritten = s_sideWords },
        new(BackSet, CellKind.Choice, "Where the quarterback takes the snap.")
        {
            Choices = ["gun", "pistol", "under", "empty"],
            AlsoWritten = new Dictionary<string, string> { ["shotgun"] = "gun", ["undercenter"] = "under", ["uc"] = "under", ["center"] = "under", ["mt"] = "empty" },
        },
        new(BackSide, CellKind.Choice, "Where the back stands: strong, weak, middle, none (L and R are resolved with strength).")
        {
            Choices = ["strong", "weak", "middle", "none", "L", "R"],
            AlsoWritten = new Dictionary<string, string>
            {
                ["left"] = "L", ["right"] = "R", ["lt"] = "L", ["rt"] = "R", ["s"] = "strong", ["str"] = "strong", ["w"] = "weak", ["wk"] = "weak",
                ["m"] = "middle", ["mid"] = "middle", ["behind"] = "middle", ["dot"] = "middle", ["home"] = "middle", ["no"] = "none", ["empty"] = "none",
            },
        },
        new(Attached, CellKind.Choice, "Sides with an attached tight end.") { Choices = ["L", "R", "both", "none"], AlsoWritten = s_attachedWords },
        new(Wing, CellKind.Choice, "Off-ball tight end, wing or fullback near the line.") { Choices = ["L", "R", "both", "none"], AlsoWritten = s_attachedWords },
        new(Motion, CellKind.Word, "Motion before the snap, or none.") { GlossaryKind = "motion" },
        new(Tempo, CellKind.Word, "Huddle, no huddle, fast.") { GlossaryKind = "tempo" },
        new(Call, CellKind.Choice, "run, pass, rpo; none = not a play for tendencies.")
        {
            Required = true,
            Choices = ["run", "pass", "rpo", "none"],
            AlsoWritten = new Dictionary<string, string> { ["r"] = "run", ["p"] = "pass", ["rush"] = "run", ["noplay"] = "none", ["kneel"] = "none", ["spike"] = "none" },
        },
        new(RunScheme, CellKind.Word, "How the line blocks the run.") { GlossaryKind = "run_scheme" },
        new(RunSide, CellKind.Choice, "L or R: the side the run is designed to.") { Choices = ["L", "R"], AlsoWritten = s_sideWords },
        new(Gap, CellKind.Choice, "Point of attack.") { Choices = ["A", "B", "C", "D"] },
        new(Read, CellKind.Word, "none, read, bash, rpo: option or tag."),
        new(PassConcept, CellKind.Word, "The routes together.") { GlossaryKind = "pass_concept" },
        new(Drop, CellKind.Word, "What the passer does.") { GlossaryKind = "drop" },
        new(Protection, CellKind.Word, "How they protect.") { GlossaryKind = "protection" },
        new(SlideSide, CellKind.Choice, "L or R: the side the line slides to.") { Choices = ["L", "R"], AlsoWritten = s_sideWords },
        new(Front, CellKind.Word, "The front the defense showed.") { GlossaryKind = "front" },
        new(Coverage, CellKind.Word, "The coverage played.") { GlossaryKind = "coverage" },
        Count(Shell, 0, 5, "High safeties shown before the snap."),
        Count(Rushers, 0, 11, "How many rushed."),
        Count(Box, 0, 11, "Defenders in the box."),
        new(PressureSide, CellKind.Choice, "Where an extra rusher came from.") { Choices = ["L", "R", "both", "none"], AlsoWritten = s_attachedWords },
        Count(Gain, -99, 99, "Yards gained."),
        new(Result, CellKind.Choice, "How the play ended.")
        {
            Choices = ["rush", "complete", "incomplete", "interception", "sack", "fumble", "scramble", "penalty"],
            AlsoWritten = new Dictionary<string, string> { ["comp"] = "complete", ["inc"] = "incomplete", ["incomp"] = "incomplete", ["int"] = "interception", ["intercepted"] = "interception", ["run"] = "rush", ["pen"] = "penalty" },
        },
        new(Touchdown, CellKind.Choice, "yes, or blank.") { Choices = ["yes"], AlsoWritten = new Dictionary<string, string> { ["y"] = "yes", ["td"] = "yes", ["1"] = "yes", ["x"] = "yes", ["true"] = "yes", ["no"] = "", ["n"] = "", ["0"] = "", ["false"] = "" } },
        new(Target, CellKind.Word, "The receiver's role.") { GlossaryKind = "role" },
        new(PenaltyOn, CellKind.Choice, "offense or defense.") { Choices = ["offense", "defense"], AlsoWritten = new Dictionary<string, string> { ["o"] = "offense", ["off"] = "offense", ["d"] = "defense", ["def"] = "defense", ["none"] = "" } },
        Count(PenaltyYards, -99, 99, "Yards marked off."),
        new(PenaltyEffect, CellKind.Choice, "replay, declined, added on, offset.") { Choices = ["replay", "declined", "added on", "offset"], AlsoWritten = new Dictionary<string, string> { ["added"] = "added on", ["replayed"] = "replay", ["offsetting"] = "offset", ["none"] = "" } },
        new(Clip, CellKind.Text, "Film reference, copied through."),
        new(Note, CellKind.Text, "Anything else."),
    ];

    private static readonly Dictionary<string, ChartColumn> s_byKey = All.ToDictionary(c => Key(c.Name));

    /// <summary>A header as it is compared: lower case, without spaces, underscores and hyphens.</summary>
    public static string Key(string header)
    {
        var key = new System.Text.StringBuilder(header.Length);
        foreach (var c in header)
        {
            if (!char.IsWhiteSpace(c) && c is not ('_' or '-' or '\uFEFF'))
            {
                key.Append(char.ToLowerInvariant(c));
            }
        }

        return key.ToString();
    }

    /// <summary>The column a header names, or null.</summary>
    public static ChartColumn? Find(string header) => s_byKey.GetValueOrDefault(Key(header));

    /// <summary>The names a week file may refer to.</summary>
    public static KnownNames Names { get; } = new(
        [.. All.Select(c => c.Name)],
        [.. All.Select(c => c.Name), YardsToGoal, .. DerivedDimensions]);

    private static ChartColumn Count(string name, int least, int most, string about) =>
        new(name, CellKind.Number, about) { Least = least, Most = most };
}
