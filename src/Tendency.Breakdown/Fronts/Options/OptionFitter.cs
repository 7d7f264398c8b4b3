using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Fronts.Options;

/// <summary>Who has the second runner when the backside end is read, by front and shell.</summary>
/// <param name="ReadMan">The last man on the line on the keep's side; an overhang where no line player sets that edge.</param>
/// <param name="Keep">Who fits the quarterback; empty when nobody does.</param>
/// <param name="KeepIsLate">Whether he comes from depth.</param>
/// <param name="Ledger">The whole count.</param>
public sealed record OptionFitter(string Front, Shell Shell, string ReadMan, string Keep, bool KeepIsLate, GapLedger Ledger)
{
    /// <summary>A zone read with the dive away from the back, the keep to him; the tight end on the dive's side unless their surface is known.</summary>
    /// <remarks>Fronts without three high safeties have one line, under the first shell.</remarks>
    public static IReadOnlyList<OptionFitter> Of(IReadOnlyList<Front> fronts, FrontBook book, Surface? surface = null)
    {
        var scheme = book.Scheme("zone read") ?? throw new InvalidOperationException("The book has no zone read.");
        var look = (surface ?? new Surface { AttachedPlay = 1 }) with { RunTo = RunTo.Away };
        return [.. fronts.SelectMany(f => Shells(f).Select(shell => Fit(f, scheme, look, shell)))];
    }

    /// <summary>The surface their reads, bash and options are run from most often; null when none is charted.</summary>
    public static Surface? UsualSurface(RunSample sample) =>
        sample.Runs.Where(r => r.Surface is not null && OptionKinds.Of(r) is OptionKind.Read or OptionKind.Bash or OptionKind.Option)
            .GroupBy(r => r.Surface! with { RunTo = null }).MaxBy(g => g.Count())?.Key;

    private static Shell[] Shells(Front front) => front.HasThreeSafeties ? Enum.GetValues<Shell>() : [Shell.TwoDeep];

    private static OptionFitter Fit(Front front, RunScheme scheme, Surface look, Shell shell)
    {
        var ledger = GapLedger.Of(front, scheme, look, shell: shell);
        var keep = ledger.Fits.First(f => f.Flank == Flank.Back && f.Gap == "keep");
        var line = Lineup.ToFlank(front, look) == Flank.Back ? front.LineTo : front.LineOff;
        var edge = line.Count > 0 ? line[^1] : null;
        var readMan = edge is not null && Technique.SetsEdge(edge) ? edge : "overhang";
        return new OptionFitter(front.Name, shell, readMan, keep.Fitter, keep.IsLate, ledger);
    }
}
