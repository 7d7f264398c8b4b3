namespace Tendency.Tests.SampleCharts;

/// <summary>
/// A second reading of the rule book, from the rows of the clean charts alone: whatever the generator and the program's audit
/// believe, down, distance, spot, hash, clock and score of each row must follow from the row above.
/// </summary>
public sealed class CleanDriveTests
{
    private static readonly string[] DrivesEndAfter = ["interception", "fumble"];

    public static TheoryData<string> Charts() => [.. SampleLogs.CleanCharts().Select(file => Path.GetRelativePath(SampleLogs.Root, file))];

    [Theory]
    [MemberData(nameof(Charts))]
    public void CleanChart_EveryRow_FollowsFromTheOneAbove(string chart)
    {
        var rows = SampleLogs.Rows(Path.Combine(SampleLogs.Root, chart)).ConvertAll(row => new Row(row));
        var wrong = rows.Zip(rows.Skip(1)).SelectMany(pair => Wrong(pair.First, pair.Second).Select(what => $"{chart} play {pair.Second.Play}: {what}"));
        Assert.Empty(wrong);
        Assert.InRange(rows.Count, 62, 76);
    }

    [Theory]
    [MemberData(nameof(Charts))]
    public void CleanChart_EveryRow_IsPossibleAlone(string chart)
    {
        var rows = SampleLogs.Rows(Path.Combine(SampleLogs.Root, chart)).ConvertAll(row => new Row(row));
        Assert.All(rows, row =>
        {
            Assert.InRange(row.ToGo, 1, row.ToGoal);
            Assert.InRange(row["gain"].Length == 0 ? 0 : row.Gain, row.ToGoal - 99, row.ToGoal);
            Assert.Equal(row["touchdown"] == "yes", row["gain"].Length > 0 && row.Gain == row.ToGoal);
            Assert.False(row["call"] == "pass" && row["run_scheme"].Length > 0, "a pass with a run scheme");
            Assert.False(row["call"] == "run" && row["pass_concept"].Length > 0, "a run with a pass concept");
            Assert.Equal(row["back_set"] == "empty", row["back_side"] == "none");
            Assert.False(row["back_set"] is "pistol" or "under" && row["back_side"] != "middle", "pistol and under stand behind");
            Assert.False(row["personnel"][1] == '0' && row["attached"] != "none", "an attached tight end nobody brought");
        });
    }

    private static IEnumerable<string> Wrong(Row a, Row b)
    {
        if (b.Quarter < a.Quarter || (b.Quarter == a.Quarter && b.Clock > a.Clock))
        {
            yield return "the clock runs backward";
        }

        if (b.Series != a.Series)
        {
            if (b.Series != a.Series + 1 || b.Down != 1 || b.ToGo != Math.Min(10, b.ToGoal))
            {
                yield return "a series does not start at first and ten";
            }

            if (!LegalScore(b.Margin - a.Margin))
            {
                yield return $"margin moves by {b.Margin - a.Margin}";
            }

            yield break;
        }

        if (b["down"] == "try")
        {
            if (a["touchdown"] != "yes" || b.Margin != a.Margin + 6)
            {
                yield return "a try without its touchdown";
            }

            yield break;
        }

        if (a["touchdown"] == "yes" || DrivesEndAfter.Contains(a["result"]) || a["down"] == "try")
        {
            yield return $"the series goes on after {a["result"]}";
            yield break;
        }

        if (b.Margin != a.Margin)
        {
            yield return "the score changes inside a series";
        }

        if (a["result"] == "incomplete" && a["hash"] != b["hash"])
        {
            yield return "an incomplete pass moved the ball across";
        }

        if (b.Quarter == a.Quarter && a.Clock - b.Clock is < 0 or > 60)
        {
            yield return $"{a.Clock - b.Clock} seconds between snaps";
        }

        var allowed = Allowed(a);
        if (!allowed.Contains((b.Down, b.ToGo, b.ToGoal)))
        {
            yield return $"{b.Down} and {b.ToGo} at {b.ToGoal}, expected {string.Join(" or ", allowed)}";
        }
    }

    /// <summary>The next down, distance and yards to goal; a defender's replayed foul may or may not bring a first down of itself.</summary>
    private static (int, int, int)[] Allowed(Row a)
    {
        (int, int, int) First(int spot) => (1, Math.Min(10, spot), spot);
        var sign = a["penalty_on"] == "defense" ? 1 : -1;
        var flag = a["penalty_yards"].Length == 0 ? 0 : sign * int.Parse(a["penalty_yards"]);
        switch (a["penalty_effect"])
        {
            case "offset":
                return [(a.Down, a.ToGo, a.ToGoal)];
            case "replay" when flag < 0:
                return [(a.Down, a.ToGo - flag, a.ToGoal - flag)];
            case "replay" when flag >= a.ToGo:
                return [First(a.ToGoal - flag)];
            case "replay":
                return [(a.Down, a.ToGo - flag, a.ToGoal - flag), First(a.ToGoal - flag)];
            case "added on":
                return [First(a.ToGoal - a.Gain - flag)];
            default:
                return [a.Gain >= a.ToGo ? First(a.ToGoal - a.Gain) : (a.Down + 1, a.ToGo - a.Gain, a.ToGoal - a.Gain)];
        }
    }

    /// <summary>Points of the offense's series end plus those of the other side's series between two charted ones.</summary>
    private static bool LegalScore(int step)
    {
        int[] ours = [0, 1, 2, 3, 6, 7, 8, -7];
        int[] theirs = [0, 3, 6, 7, 8, -7];
        return ours.Any(own => theirs.Any(other => own - other == step));
    }

    private sealed class Row(Dictionary<string, string> cells)
    {
        public string this[string header] => cells[header];

        public int Play => int.Parse(this["play"]);

        public int Series => int.Parse(this["series"]);

        public int Quarter => int.Parse(this["quarter"]);

        public int Margin => int.Parse(this["margin"]);

        public int Down => this["down"] == "try" ? 0 : int.Parse(this["down"]);

        public int Gain => int.Parse(this["gain"]);

        public int Clock
        {
            get
            {
                var parts = this["clock"].Split(':');
                return (int.Parse(parts[0]) * 60) + int.Parse(parts[1]);
            }
        }

        public int ToGoal
        {
            get
            {
                var words = this["ball_on"].Split(' ');
                return words.Length == 1 ? 50 : words[0] == "own" ? 100 - int.Parse(words[1]) : int.Parse(words[1]);
            }
        }

        public int ToGo => this["distance"] == "goal" ? ToGoal : int.Parse(this["distance"]);
    }
}
