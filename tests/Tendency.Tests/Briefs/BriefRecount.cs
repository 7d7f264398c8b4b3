using System.Globalization;
using System.Text.RegularExpressions;

namespace Tendency.Tests.Briefs;

/// <summary>A share as printed: whole percents.</summary>
internal sealed record PrintedShare(int Percent, int Count, int Plays, string Low, string High);

/// <summary>Holds what a brief says against counts of its own.</summary>
internal sealed partial class BriefRecount(IReadOnlyList<RecountedPlay> rows)
{
    private readonly RecountedPlay[] plays = [.. rows.Where(row => row.IsCounted)];

    public void CheckFigure(string label, PrintedShare share)
    {
        RecountedPlay[] of = label switch
        {
            "Run share" => plays,
            "Gained enough" or "Long plays, 12+ / 16+" => [.. plays.Where(play => play.Success is not null)],
            "Third downs converted" => [.. plays.Where(play => play is { Down: 3, Success: not null })],
            "Red zone plays run" => [.. plays.Where(play => play.ToGoal <= 20)],
            _ => [.. plays.Where(play => play.Down == 1)],
        };
        var ofSuccess = label is "Gained enough" or "Third downs converted" or "Long plays, 12+ / 16+";
        Check(share, of, [.. plays.Where(play => !ofSuccess || play.Success is not null)], play => label switch
        {
            "Gained enough" or "Third downs converted" => play.Success == true,
            "Long plays, 12+ / 16+" => play.IsLong,
            _ => play.Call == "run",
        }, label);
    }

    public void CheckClaim(string sentence, PrintedShare share, string support)
    {
        var (of, done, line, all) = Meaning(sentence);
        Check(share, of, all, done, sentence);

        // No sentence without a range on one side of its line; its verb as strong as the range and no stronger.
        var (low, _) = RecountedRange.Of(of, all, done);
        Assert.True(low > line, $"{sentence} {low:F3} against {line:F3}");
        Assert.True(of.Length >= 5, sentence);
        if (sentence.Contains(", they ", StringComparison.Ordinal))
        {
            var nearly = sentence.Contains("nearly always", StringComparison.Ordinal);
            var more = sentence.Contains("more than usual", StringComparison.Ordinal);
            Assert.Equal((low >= .8, low <= .5), (nearly, more));
            Assert.True(of.Length >= 8, sentence);
        }

        CheckGames(support, of, done, line);
        CheckMost(support, of, done, sentence);
    }

    /// <summary>Numbers of the sentences whose range at a level that pays for every place looked at (Bonferroni) holds the line; "1, 3 and 4".</summary>
    public string CouldBeLuck(IEnumerable<string> claims, int tried)
    {
        var z = Quantile(1 - (.025 / tried));
        string[] numbers = [.. claims.Index().Where(claim => Meaning(claim.Item) is var (of, done, line, all) && RecountedRange.Of(of, all, done, z).Low <= line).Select(claim => $"{claim.Index + 1}")];
        return numbers.Length < 2 ? string.Concat(numbers) : $"{string.Join(", ", numbers[..^1])} and {numbers[^1]}";
    }

    /// <summary>Cells filled among the plays a column applies to.</summary>
    public (int Filled, int Plays) Filled(string column)
    {
        var name = column.Replace(' ', '_');
        var of = name switch
        {
            "run_scheme" or "run_side" or "gap" or "read" => plays.Where(play => play.Call == "run"),
            "pass_concept" or "drop" or "protection" or "slide_side" or "target" => plays.Where(play => play.Call == "pass"),
            _ => plays,
        };
        return (of.Count(play => play[name].Length > 0), of.Count());
    }

    /// <summary>The plays a sentence speaks of, what they do there, the rate it is read against, and all plays that answer its question.</summary>
    private (RecountedPlay[] Of, Func<RecountedPlay, bool> Done, double Line, RecountedPlay[] All) Meaning(string sentence)
    {
        switch (sentence)
        {
            case "Runs go away from an offset back." or "Runs go to the back's side." or "Runs go to the back’s side.":
                return Way(play => play.Way("run_side", play.BackAt), sentence.Contains("away", StringComparison.Ordinal));
            case "The slide goes away from the back." or "The slide goes to the back's side." or "The slide goes to the back’s side.":
                return Way(play => play.Way("slide_side", play.BackAt), sentence.Contains("away", StringComparison.Ordinal));
            case "Runs go to the strength." or "Runs go away from the strength.":
                return Way(play => play.Way("run_side", play["strength"]), sentence.Contains("away", StringComparison.Ordinal));
        }

        var parts = sentence.TrimEnd('.').Split(", they ");
        var call = parts[1].Contains("throw", StringComparison.Ordinal) ? "pass" : "run";
        return ([.. plays.Where(Holds(parts[0]))], play => play.Call == call, Rate(plays, play => play.Call == call), plays);
    }

    private (RecountedPlay[] Of, Func<RecountedPlay, bool> Done, double Line, RecountedPlay[] All) Way(Func<RecountedPlay, bool?> same, bool away)
    {
        RecountedPlay[] sided = [.. plays.Where(play => same(play) is not null)];
        return (sided, play => same(play) == !away, .5, sided);
    }

    private static Func<RecountedPlay, bool> Holds(string when)
    {
        var down = DownWords().Match(when);
        if (down.Success)
        {
            int[] downs = [.. down.Groups["downs"].Value.Split(" or ").Select(word => Array.IndexOf(["", "first", "second", "third", "fourth"], word))];
            return play => downs.Contains(play.Down) && Distance(down.Groups["how"].Value, play);
        }

        return when switch
        {
            "With the back weak" => play => play["back_side"] == "weak",
            "With the back strong" => play => play["back_side"] == "strong",
            "With the back behind the QB" => play => play["back_side"] == "middle",
            "On the first snap of a series" => play => play.IsFirstOfSeries,
            "In the red zone" => play => play.ToGoal <= 20,
            "After a run" or "After a pass" or "After a rpo" => play => play.CallBefore == when[8..],
            _ when when.StartsWith("With ", StringComparison.Ordinal) && when.EndsWith(" personnel", StringComparison.Ordinal) => play => play["personnel"] == when[5..^10],
            _ when when.StartsWith("From ", StringComparison.Ordinal) => play => string.Equals(play["formation"], when[5..], StringComparison.OrdinalIgnoreCase),
            _ => throw new InvalidOperationException($"No recount for '{when}'."),
        };
    }

    private static bool Distance(string how, RecountedPlay play) => how switch
    {
        "" or "down" => true,
        "10" => play is { ToGo: 10, IsGoalToGo: false },
        "goal" => play.IsGoalToGo,
        "short" => play.ToGo <= 3,
        "medium" => play.ToGo is >= 4 and <= 6,
        "long" => play.ToGo >= 7,
        _ => play.ToGo >= int.Parse(how.Split(' ')[0], CultureInfo.InvariantCulture),
    };

    private static void CheckGames(string support, RecountedPlay[] of, Func<RecountedPlay, bool> done, double line)
    {
        var games = of.GroupBy(play => play["game"]).ToArray();
        var over = games.Count(game => Rate([.. game], done) > line);
        string[] numbers = ["no", "one", "two", "three", "four", "five"];
        var said = games.Length < 2 ? "" : $"So in {(over == games.Length ? $"all {numbers[over]}" : $"{over} of {games.Length}")} games.";
        Assert.StartsWith(said, support, StringComparison.Ordinal);
    }

    /// <summary>The two most frequent calls of the plays that did it; of equals any may be named.</summary>
    private static void CheckMost(string support, RecountedPlay[] of, Func<RecountedPlay, bool> done, string sentence)
    {
        var passes = sentence.Contains("throw", StringComparison.Ordinal) || sentence.StartsWith("The slide", StringComparison.Ordinal);
        var calls = of.Where(done).Select(play => play[passes ? "pass_concept" : "run_scheme"]).Where(call => call.Length > 0).ToArray();
        var named = NamedCall().Matches(support.Contains("Most: ", StringComparison.Ordinal) ? support[(support.IndexOf("Most: ", StringComparison.Ordinal) + 6)..] : "");
        Assert.Equal(calls.GroupBy(call => call).Select(group => group.Count()).OrderDescending().Take(2), named.Select(call => int.Parse(call.Groups["times"].Value, CultureInfo.InvariantCulture)));
        Assert.All(named, call => Assert.Equal(calls.Count(other => string.Equals(other, call.Groups["call"].Value, StringComparison.OrdinalIgnoreCase)), int.Parse(call.Groups["times"].Value, CultureInfo.InvariantCulture)));
    }

    private static void Check(PrintedShare share, RecountedPlay[] of, RecountedPlay[] all, Func<RecountedPlay, bool> done, string what)
    {
        var count = of.Count(done);
        Assert.Equal((what, count, of.Length), (what, share.Count, share.Plays));
        Assert.Equal(Whole(100.0 * count / of.Length), share.Percent);
        var (low, high) = RecountedRange.Of(of, all, done);
        Assert.Equal((Limit(low), Limit(high)), (share.Low, share.High));
    }

    /// <summary>Never 0 or 100 unless exactly so.</summary>
    private static string Limit(double share) =>
        share is > 0 and < .005 ? "<1" : share is < 1 and >= .995 ? ">99" : Whole(100 * share).ToString(CultureInfo.InvariantCulture);

    private static int Whole(double percent) => (int)Math.Floor(percent + .5);

    /// <summary>Of the standard normal, by halving; its area by Simpson's rule in steps of a thousandth, good to nine digits.</summary>
    private static double Quantile(double area)
    {
        var (low, high) = (0.0, 8.0);
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Area(middle) < area ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static double Area(double z)
    {
        const int Steps = 8_000;
        static double Density(double x) => Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
        var step = z / Steps;
        return .5 + (Enumerable.Range(0, Steps).Sum(i => Density(i * step) + (4 * Density((i + .5) * step)) + Density((i + 1) * step)) * step / 6);
    }

    private static double Rate(IReadOnlyCollection<RecountedPlay> of, Func<RecountedPlay, bool> done) => (double)of.Count(done) / of.Count;

    [GeneratedRegex(@"^On (?<downs>(?:first|second|third|fourth)(?: or (?:second|third|fourth))*)(?: and (?<how>10|goal|short|medium|long|\d+ or more)| (?<how>down))$")]
    private static partial Regex DownWords();

    [GeneratedRegex(@"(?<call>[A-Za-z][A-Za-z -]*?) (?<times>\d+)")]
    private static partial Regex NamedCall();
}
