using System.Globalization;

namespace Tendency.Tests.Briefs;

/// <summary>A row of a clean chart, read and counted here without any of the program's own code.</summary>
internal sealed class RecountedPlay
{
    private readonly IReadOnlyDictionary<string, string> cells;

    private RecountedPlay(IReadOnlyDictionary<string, string> cells) => this.cells = cells;

    public string this[string column] => column == "call" ? Call : cells[column];

    /// <summary>What it counts as: an option by its result.</summary>
    public string Call => (cells["call"], cells["result"]) switch
    {
        ("rpo", "rush") => "run",
        ("rpo", "complete" or "incomplete" or "interception" or "sack" or "scramble") => "pass",
        var (call, _) => call,
    };

    public bool IsCounted => cells["call"] is not ("none" or "") && cells["down"] != "try";

    public int Down => int.TryParse(cells["down"], NumberStyles.None, CultureInfo.InvariantCulture, out var down) ? down : 0;

    public int ToGoal => cells["ball_on"].Split(' ') switch
    {
        ["50"] => 50,
        ["own", var yards] => 100 - int.Parse(yards, CultureInfo.InvariantCulture),
        [_, var yards] => int.Parse(yards, CultureInfo.InvariantCulture),
        _ => 0,
    };

    public int ToGo => cells["distance"] == "goal" ? ToGoal : int.Parse(cells["distance"], CultureInfo.InvariantCulture);

    public bool IsGoalToGo => ToGo >= ToGoal;

    /// <summary>Down and distance, the plays of a game that lie closest.</summary>
    public string Situation => Down == 1 && IsGoalToGo ? "1 goal"
        : Down == 1 && ToGo == 10 ? "1 and 10"
        : $"{Down} {(ToGo <= 3 ? "short" : ToGo <= 6 ? "medium" : ToGo <= 10 ? "long" : "extra long")}";

    /// <summary>40, 60 or all of the yards to go; null where a flag or a blank leaves it open.</summary>
    public bool? Success => cells["result"] == "penalty" || cells["penalty_effect"] is "replay" or "offset" || cells["gain"].Length == 0 ? null
        : cells["result"] != "interception"
            && (cells["touchdown"] == "yes" || (cells["result"] != "fumble" && Gain * 100 >= ToGo * (Down == 1 ? 40 : Down == 2 ? 60 : 100)));

    public bool IsLong => (Call == "run" && Gain >= 12) || (Call == "pass" && cells["result"] != "interception" && Gain >= 16);

    /// <summary>L or R where the back stands on a side.</summary>
    public string BackAt => cells["back_side"] switch { "strong" => cells["strength"], "weak" => cells["strength"] == "L" ? "R" : "L", _ => "" };

    public bool IsFirstOfSeries { get; private set; }

    /// <summary>Counted call of the snap before in the same series; empty on the first.</summary>
    public string CallBefore { get; private set; } = "";

    private int Gain => int.Parse(cells["gain"], CultureInfo.InvariantCulture);

    /// <summary>Whether a side is the reference's; null where either is not charted.</summary>
    public bool? Way(string column, string reference) => cells[column].Length == 0 || reference.Length == 0 ? null : cells[column] == reference;

    /// <summary>All rows of the charts; clean charts quote nothing.</summary>
    public static IReadOnlyList<RecountedPlay> Of(IEnumerable<string> charts)
    {
        var all = new List<RecountedPlay>();
        foreach (var lines in charts.Select(chart => chart.Split('\n', StringSplitOptions.RemoveEmptyEntries)))
        {
            var headers = lines[0].Split(',');
            all.AddRange(lines.Skip(1).Select(line => new RecountedPlay(headers.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second))));
        }

        var before = new Dictionary<(string, string), string>();
        foreach (var play in all.Where(play => play.IsCounted))
        {
            var series = (play["game"], play["series"]);
            (play.IsFirstOfSeries, play.CallBefore) = (!before.ContainsKey(series), before.GetValueOrDefault(series, ""));
            before[series] = play.Call;
        }

        return all;
    }
}
