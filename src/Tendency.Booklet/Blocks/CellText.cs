namespace Tendency.Booklet.Blocks;

/// <summary>What one cell says, in words: the text form of tables, and what a screen reader hears for a strip.</summary>
public static class CellText
{
    public static string Of(Cell cell) => cell switch
    {
        TextCell text => string.Join(" / ", text.Lines.Select(BlockText.Marked).Append(text.Plays is null ? "" : string.Join("; ", text.Plays.Items())).Where(line => line.Length > 0)),
        ShareCell share => Of(share.Share),
        StripCell strip => Mark(strip.Share),
        EstimateCell estimate => $"{(estimate.Baseline is null ? "tick" : estimate.Differs ? "solid" : "open")} {Figures.Signed(estimate.Value, 2)} ({Figures.Signed(estimate.Low, 2)} to {Figures.Signed(estimate.High, 2)})",
        CountsCell counts => string.Join(" / ", counts.Counts.Select(item => $"{item.Name} {Figures.Count(item.Count)}")),
        SparkCell spark => string.Join(' ', spark.Games.Select(game => game.None ? "–" : $"{Figures.Count(game.Count)}/{Figures.Count(game.Plays)}")),
        BarCell bar => Of(bar.Bar),
        HeatCell heat => $"{(heat.Bold ? $"*{heat.Text}*" : heat.Text)} {heat.Under}{(heat.Step == HeatStep.None ? "" : $" [{heat.Step.ToString().ToLowerInvariant()} frame]")}",
        CallCell call => $"{call.Call} {call.Under} [{Of(call.Tone)}]",
        _ => throw new InvalidOperationException($"{cell.GetType().Name} has no text form."),
    };

    /// <summary>"71% 44 of 62 (59–81%)", in asterisks where print is bold.</summary>
    public static string Of(Share share)
    {
        if (share.None || share.TooFew)
        {
            return share.None ? "no plays" : $"{Figures.CountOf(share)} (too few)";
        }

        var percent = share.Differs ? $"*{Figures.Percent(share)}*" : Figures.Percent(share);
        var range = Figures.Range(share);
        return $"{percent} {Figures.CountOf(share)}{(range.Length == 0 ? "" : $" ({range})")}";
    }

    public static string Of(Bar bar) => $"{bar.Label}{(bar.Label.Length == 0 ? "" : " ")}{bar.Tip}{(bar.Winner ? " (winner)" : "")}";

    /// <summary>How the strip looks: "solid dot", "open dot", "tick", "hatch", "no plays".</summary>
    public static string Mark(Share share) =>
        share.None ? "no plays"
        : share.TooFew ? $"hatch, n = {Figures.Count(share.Plays)}"
        : share.Baseline is null ? "tick"
        : $"{(share.Differs ? "solid dot" : "open dot")} against {Figures.Percent(share.Baseline.Value)}";

    private static string Of(CallTone tone) => tone switch
    {
        CallTone.Even => "could be even",
        CallTone.SureRun => "sure run",
        CallTone.SurePass => "sure pass",
        CallTone.TooFew => "too few",
        _ => "leans",
    };
}
