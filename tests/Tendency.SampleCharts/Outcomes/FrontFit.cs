namespace Tendency.SampleCharts.Outcomes;

/// <summary>
/// The truth of the invented world: how well each front stands against each run, +2 (built for it) to −2 (built against),
/// in the front's favour. The numbers are the trade's prior (front-scheme-fit.csv), so that the front check has film to
/// learn from which its prior does not contradict.
/// </summary>
public static class FrontFit
{
    private static readonly string[] Fronts =
    [
        "tight", "five to back", "five away", "double five", "edge away", "edge to back", "over",
        "under", "bear", "okie", "even 2i", "wide nine", "stack",
    ];

    /// <summary>Per scheme, for each front in the order above: rating to the back, then away from him.</summary>
    private static readonly Dictionary<string, int[]> Ratings = new(StringComparer.Ordinal)
    {
        ["inside zone"] = [2, 2, 0, 2, 2, 0, -1, -1, 0, 1, 1, 0, 0, 0, 1, 1, 2, 2, 0, 0, 0, 0, -1, -1, 1, 1],
        ["mid zone"] = [0, 0, 1, 0, 0, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 1, 1, 0, 0, -1, -1, -1, -1, 0, 0],
        ["outside zone"] = [0, 0, 1, -1, -1, 1, 1, 1, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 1, 1, -1, -1, 1, 1, -1, -1],
        ["split zone"] = [0, 0, 0, 1, 1, 0, 0, 0, 1, 0, 0, 1, 0, 0, 0, 0, 1, 1, 1, 1, 0, 0, -1, -1, 0, 0],
        ["zone read"] = [0, 0, 0, 1, 0, -1, 0, 0, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 1, -1, -1, 0, 0, 0, 0],
        ["power"] = [-1, -1, 1, -1, -1, 1, 1, 1, -1, 0, 0, -1, 0, 0, 1, 1, 1, 1, 1, 1, 0, 0, -2, -2, 0, 0],
        ["counter gt"] = [-1, -1, 0, -1, -1, 0, 0, 0, -1, 1, 0, -1, -1, -1, 0, 0, 1, 1, 0, 0, 0, 0, -2, -2, -1, -1],
        ["counter gh"] = [-1, -1, 0, -1, -1, 0, 1, 1, -1, 0, 0, -1, -1, -1, 0, 0, 1, 1, 0, 0, 0, 0, -1, -1, 0, 0],
        ["duo"] = [-1, -1, 0, -1, -1, 0, -1, -1, -1, 0, 0, -1, 0, 0, 0, 0, 1, 1, -1, -1, 0, 0, -1, -1, -1, -1],
        ["down g"] = [-1, -1, 0, -1, -1, 0, 0, 0, 0, 0, 0, 0, 0, 0, -1, -1, 0, 0, 0, 0, 0, 0, -1, -1, 0, 0],
        ["pin pull"] = [-1, -1, 1, -1, -1, 1, 1, 1, 0, 0, 0, 0, -1, -1, -1, -1, -1, -1, 1, 1, -1, -1, 0, 0, -1, -1],
        ["trap"] = [1, 1, 0, 1, 1, 0, -1, -1, 0, -1, -1, 0, -1, -1, -1, -1, 0, 0, 0, 0, 1, 1, -2, -2, 1, 1],
        ["wham"] = [0, 0, 0, 0, 0, 0, -1, -1, -1, 0, 0, -1, -1, -1, -1, -1, -1, -1, -1, -1, 0, 0, -1, -1, 0, 0],
        ["dart"] = [1, 1, 0, 1, 1, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, -1, -1, -1, -1, 0, 0],
        ["iso"] = [1, 1, -1, 1, 1, -1, -1, -1, -1, 0, 0, -1, -1, -1, 0, 0, 1, 1, -1, -1, -1, -1, -1, -1, 0, 0],
        ["draw"] = [0, 0, 0, 0, 0, 0, -1, -1, 0, 0, 0, 0, -1, -1, 0, 0, -1, -1, -1, -1, 0, 0, -2, -2, 1, 1],
        ["toss sweep"] = [-1, -1, 1, -1, -1, 1, 1, 1, 0, 1, 1, 0, 0, 0, 0, 0, -1, -1, 1, 1, 0, 0, 1, 1, 0, 0],
        ["jet sweep"] = [-1, -1, 1, -1, -1, 1, 1, 1, 0, 1, 1, 0, 0, 0, 0, 0, -1, -1, 1, 1, 0, 0, 1, 1, 0, 0],
        ["speed option"] = [0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, -1, -1, 1, 1, 0, 0, 1, 1, 0, 0],
        ["qb power"] = [-1, -1, 0, -1, -1, 0, -1, -1, -1, 0, 0, -1, -1, -1, 0, 0, 0, 0, 0, 0, -1, -1, -2, -2, 0, 0],
        ["bash"] = [-1, -1, 0, -1, -1, 0, 0, 0, 0, 0, 1, 0, -1, -1, -1, -1, -1, -1, 0, 0, 0, 0, 0, 0, -1, -1],
    };

    /// <summary>Schemes nobody rates, with the rated one whose angles they share.</summary>
    private static readonly Dictionary<string, string> Nearest = new(StringComparer.Ordinal)
    {
        ["insert zone"] = "iso",
        ["zone lock"] = "inside zone",
        ["arc read"] = "zone read",
        ["power read"] = "power",
        ["buck sweep"] = "pin pull",
        ["long trap"] = "power",
        ["lead draw"] = "draw",
        ["qb draw"] = "draw",
        ["qb counter"] = "qb power",
        ["qb lead"] = "qb power",
        ["qb sweep"] = "toss sweep",
    };

    /// <summary>The rating of a front against a run; the mean of both sides where the back stands on neither, 0 where unrated.</summary>
    public static double Rating(string front, string scheme, char? runSide, char? back)
    {
        var at = Array.IndexOf(Fronts, front);
        if (at < 0 || !Ratings.TryGetValue(Nearest.GetValueOrDefault(scheme, scheme), out var row))
        {
            return 0;
        }

        return runSide is null || back is null ? (row[2 * at] + row[(2 * at) + 1]) / 2.0
            : runSide == back ? row[2 * at] : row[(2 * at) + 1];
    }
}
