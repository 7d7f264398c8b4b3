using System.Globalization;

namespace Tendency.SampleCharts.Tired;

/// <summary>
/// One way to get a cell wrong. Wrong gives the value a tired hand writes on this row, or null where this slip cannot happen
/// there (or would leave the row possible, so that nobody could find it). The row above comes with it.
/// </summary>
internal sealed record SlipKind(string What, string Column, Func<TiredRow, TiredRow?, Chance, string?> Wrong);

/// <summary>The slips of single cells. Lists are tried in order, so that what needs a rare row (a sack, a kneel) finds it free.</summary>
internal static class SlipKinds
{
    /// <summary>Slips that need a rare row.</summary>
    public static IReadOnlyList<SlipKind> Rare { get; } =
    [
        new("scramble charted as a run", "call", (row, _, _) => row.Film("result") == "scramble" ? "run" : null),
        new("kneel charted as a run", "call", (row, _, _) => row.Film("note") == "kneel" ? "run" : null),
        new("sack with a gain", "gain", (row, _, _) => row.Film("result") == "sack" && Number(row, "gain") is { } n and < -1 ? Text(-n) : null),
        new("touchdown not marked", "touchdown", (row, _, _) => row.Film("touchdown") == "yes" ? "" : null),
    ];

    /// <summary>What every charter gets wrong once a night: the cells of the drive.</summary>
    public static IReadOnlyList<SlipKind> Drive { get; } =
    [
        new("wrong down", "down", (row, _, _) => row.Film("down") switch { "2" => "3", "3" => "2", "1" => "2", _ => null }),
        new("wrong distance", "distance", (row, _, chance) => Number(row, "distance") is { } n and > 1 && row.Film("down") != "1"
            ? Text(n > 6 ? n - chance.Between(2, 5) : n + chance.Between(2, 5)) : null),
        new("sign of the gain", "gain", (row, _, _) => Number(row, "gain") is { } n && Math.Abs(n) >= 3 && row.Film("touchdown").Length == 0 && row.Film("result") is "rush" or "complete"
            ? Text(-n) : null),
        new("own and opponent's side swapped", "ball_on", (row, _, _) => Swap(row.Film("ball_on"))),
        new("a slipped digit in the gain", "gain", (row, _, _) => Number(row, "gain") is { } n && n is >= 2 and <= 9 && row.Film("result") is "rush" or "complete" && row.Film("touchdown").Length == 0
            ? Text(n * 10 > 60 ? n + 10 : n * 10) : null),
        new("hash moved after an incomplete pass", "hash", (row, previous, _) =>
            previous is not null && previous.Film("result") == "incomplete" && previous.Film("series") == row.Film("series") && row.Film("result") is "rush" or "complete"
                ? row.Film("hash") == "L" ? "R" : "L" : null),
        new("the gain is missing", "gain", (row, _, _) => Number(row, "gain") is not null && row.Film("result") is "rush" or "complete" ? "" : null),
    ];

    /// <summary>The rest; a night has every other one.</summary>
    public static IReadOnlyList<SlipKind> Other { get; } =
    [
        new("the clock runs backward", "clock", (row, _, _) => Minutes(row.Film("clock")) is { } m and < 12 && row.Film("down") is "2" or "3" ? $"{m + 3}{row.Film("clock")[row.Film("clock").IndexOf(':')..]}" : null),
        new("wrong quarter", "quarter", (row, _, _) => row.Film("quarter") is "2" or "3" && row.Film("down") is "2" ? (row.Film("quarter") == "2" ? "1" : "4") : null),
        new("margin from the other bench", "margin", (row, _, _) => Number(row, "margin") is { } n && Math.Abs(n) >= 3 && row.Film("down") is "2" or "3" ? Text(-n) : null),
        new("impossible personnel", "personnel", (row, _, _) => row.Film("personnel") == "11" ? "61" : null),
        new("incomplete pass with a gain", "gain", (row, _, chance) => row.Film("result") == "incomplete" ? Text(chance.Between(4, 12)) : null),
        new("a pass called a run", "call", (row, _, _) => row.Film("call") == "pass" && row.Film("result") is "complete" or "incomplete" ? "run" : null),
        new("typo", "run_scheme", (row, _, _) => row.Film("run_scheme") switch { "inside zone" => "insde zone", "outside zone" => "outsid zone", "counter gt" => "conter gt", "power" => "powr", _ => null }),
        new("typo", "formation", (row, _, _) => row.Film("formation") switch { "doubles" => "doubels", "trips closed" => "trips cloesd", "bunch" => "buncch", _ => null }),
        new("typo", "pass_concept", (row, _, _) => row.Film("pass_concept") switch { "slant flat" => "slant falt", "curl flat" => "crul flat", "smash" => "smahs", "stick" => "stcik", "four verticals" => "four vertcals", _ => null }),
        new("typo", "coverage", (row, _, _) => row.Film("coverage") switch { "quarters" => "quaters", "palms" => "plams", "three high quarters" => "three hgih quarters", _ => null }),
        new("letter for a number", "down", (row, _, _) => row.Film("down") == "2" ? "2nd!" : null),
        new("distance eaten by the spreadsheet", "distance", (row, _, _) => row.Film("distance") is "10" ? "10-Oct" : null),
    ];

    private static int? Number(TiredRow row, string column) =>
        int.TryParse(row.Film(column), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n) ? n : null;

    private static int? Minutes(string clock) =>
        int.TryParse(clock.Split(':')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) ? minutes : null;

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string? Swap(string ballOn) =>
        ballOn.StartsWith("own ", StringComparison.Ordinal) ? "opp " + ballOn[4..]
        : ballOn.StartsWith("opp ", StringComparison.Ordinal) ? "own " + ballOn[4..]
        : null;
}
