using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>Success each front allows as the share of one run family moves, the rest of the mix in its present proportion.</summary>
internal static class FrontPlot
{
    private const int MostLines = 5;
    private const double Height = 200;

    // The weighted mix takes a row of the table above.
    private const double LowHeight = 150;

    /// <summary>The family whose share comes nearest to turning the leader's answer; null where no family is charted.</summary>
    public static Plot? Of(Study study, FrontCheck check)
    {
        var leader = check.Ranking.Ranks[0].Front;
        var turn = check.BreakEvens.Where(even => (even.FrontA == leader || even.FrontB == leader) && even.BreakEvenShare is not null)
            .OrderBy(even => Math.Abs(even.BreakEvenShare!.Value - even.ShareNow)).FirstOrDefault();
        var family = RunFamily.All.First(known => known.Name == (turn?.Family ?? "gap"));
        var now = study.OfRuns(check, run => family.Holds(run.Scheme));
        var lines = check.Ranking.Ranks.Take(MostLines)
            .Select(rank => (rank.Front, Ends: FrontMix.OfFamily(check.Matrix, check.Matrix.Fronts.Index().First(front => front.Item.Name == rank.Front).Index, family)))
            .Where(line => line.Ends is not null).Select(line => (line.Front, line.Ends!.Value.With, line.Ends!.Value.Without)).ToArray();
        var weighted = check.Matrix.Mix.EffectiveRuns < check.Matrix.Mix.Runs;
        if (lines.Length == 0 || now.Tally.Plays == 0)
        {
            return null;
        }

        var most = Math.Clamp(Math.Ceiling(Math.Max(.6, Math.Max(now.Likely.High, turn?.BreakEvenShare ?? 0) + .05) * 10) / 10, .6, 1);
        double At((string Front, double With, double Without) line, double share) => (share * line.With) + ((1 - share) * line.Without);
        var values = lines.SelectMany(line => new[] { At(line, 0), At(line, most) }).ToArray();
        var low = Math.Floor((values.Min() - .01) * 20) / 20;
        var high = Math.Ceiling((values.Max() + .01) * 20) / 20;
        return new Plot(
            new PlotAxis(0, most, Ticks(0, most, .2), $"{FrontVerdict.Family(family.Name)}, share of runs"),
            new PlotAxis(low, high, Ticks(low, high, .05), "success allowed; lower is better"),
            weighted ? LowHeight : Height,
            $"success each front allows by the share of {FrontVerdict.Family(family.Name)}")
        {
            Lines = [.. lines.Select(line => new PlotLine([0, most], [At(line, 0), At(line, most)], Words.Title(line.Front)) { Winner = line.Front == leader && check.Ranking.HasClearWinner })],
            Bands = [new PlotBand(now.Likely.Low, now.Likely.High, Upright: true, $"likely {Figures.Range(now.Likely)}")],
            Rules = [new PlotRule(now.Share, Upright: true, $"now {Figures.Percent(now.Share)}{(weighted ? " weighted" : "")}")],
            Rings = turn?.BreakEvenShare is { } even && lines.Any(line => line.Front == leader)
                ? [new PlotRing(even, At(lines.First(line => line.Front == leader), even), $"even at {Figures.Percent(even)}")]
                : [],
            NameWidth = 70,
        };
    }

    private static Tick[] Ticks(double low, double high, double step)
    {
        var first = (int)Math.Ceiling((low / step) - 1e-9);
        var last = (int)Math.Floor((high / step) + 1e-9);
        return [.. Enumerable.Range(first, last - first + 1).Select(i => new Tick(i * step, i == last ? Figures.Percent(i * step) : Figures.Number(i * step * 100, 0)))];
    }
}
