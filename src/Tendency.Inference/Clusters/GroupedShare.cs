using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Clusters;

/// <summary>
/// One share of observations that come in groups: its estimate, what the grouping costs, and intervals that pay for it. Groups without
/// trials are left out. The house's interval is Wilson's on the effective count under a correlation pooled over many cells. Shares are
/// fractions. Source: Franco, Little, Louis and Slud 2019, Journal of Survey Statistics and Methodology 7:334 (PMC6690503).
/// </summary>
public sealed record GroupedShare
{
    /// <param name="groups">Hits and trials of each group.</param>
    public GroupedShare(IEnumerable<GroupCount> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        Groups = [.. groups.Where(group => group.Trials > 0)];
        Hits = Groups.Sum(group => group.Hits);
        Trials = Groups.Sum(group => group.Trials);
    }

    /// <summary>The groups with trials.</summary>
    public IReadOnlyList<GroupCount> Groups { get; }

    /// <summary>Sum over the groups.</summary>
    public double Hits { get; }

    /// <summary>Sum over the groups.</summary>
    public double Trials { get; }

    /// <summary>Hits among trials; null without trials.</summary>
    public double? Share => Trials > 0 ? Hits / Trials : null;

    /// <summary>
    /// Variance of the share by linearisation, K/(K - 1) sum (x - m p)² / N²; null with fewer than two groups. Too small with 3 to 5
    /// groups. Source: Kish 1965; as in svymean of R's survey package.
    /// </summary>
    public double? LinearVariance
    {
        get
        {
            if (Groups.Count < 2)
            {
                return null;
            }

            // Over a common denominator: equal shares of whole numbers then differ by exactly nothing.
            var sum = Groups.Sum(group => Math.Pow(((group.Hits * Trials) - (group.Trials * Hits)) / Trials, 2));
            return Groups.Count / (Groups.Count - 1.0) * sum / (Trials * Trials);
        }
    }

    /// <summary>LinearVariance over p(1 - p)/N; null where p is 0 or 1.</summary>
    public double? LinearDesignEffect => Share * (1 - Share) / Trials is > 0 and var independent ? LinearVariance / independent : null;

    /// <summary>Independent observations, a real number, this is worth under the within-group correlation; 0 without trials, never above them.</summary>
    /// <param name="rho">Correlation within a group; negative estimates count as 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The correlation is not a number.</exception>
    public double EffectiveTrials(double rho) => EffectiveSize.OfGroups(Groups.Select(group => group.Trials), rho);

    /// <summary>
    /// By how much the grouping widens the variance under the within-group correlation, Trials / EffectiveTrials: 1 + (m - 1) rho with m the
    /// mean group size over trials (Kish 1965). At least 1; null without trials.
    /// </summary>
    /// <param name="rho">Correlation within a group; negative estimates count as 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The correlation is not a number.</exception>
    public double? DesignEffect(double rho) => EffectiveTrials(rho) is > 0 and var effective ? Trials / effective : null;

    /// <summary>Wilson's interval on the effective count; [0, 1] without trials. With one group only it says nothing about other groups.</summary>
    /// <param name="rho">Correlation within a group; negative estimates count as 0.</param>
    /// <param name="level">In (0, 1).</param>
    /// <exception cref="ArgumentOutOfRangeException">The correlation is not a number, or the level outside.</exception>
    public Interval Interval(double rho, double level)
    {
        var n = EffectiveTrials(rho);
        return OneProportion.Wilson((Share ?? 0) * n, n, level);
    }

    /// <summary>
    /// Korn and Graubard's interval: Clopper-Pearson on p(1 - p)/variance, degrees of freedom paid for. Valid but much wider with few
    /// groups; null when the linearised variance is 0 or unknown. Source: Korn and Graubard 1998, Survey Methodology 24:193 [from memory].
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside (0, 1).</exception>
    public Interval? KornGraubard(double level)
    {
        Domain.Level(level);
        if (LinearVariance is not > 0 || Trials - 1 < Domain.Least)
        {
            return null;
        }

        double p = Hits / Trials, upper = (1 + level) / 2;
        var ratio = StudentT.Quantile(Trials - 1, upper) / StudentT.Quantile(Groups.Count - 1, upper);
        var n = p * (1 - p) / LinearVariance.Value * ratio * ratio;
        n = Math.Min(n, Domain.Most);
        return OneProportion.ClopperPearson(p * n, n, level);
    }
}
