namespace Tendency.Breakdown.Glossaries;

/// <summary>Which family of runs a scheme belongs to (common practice, no source).</summary>
internal static class RunSchemeFamilies
{
    private static readonly Dictionary<string, string> s_families = new(StringComparer.Ordinal)
    {
        ["inside zone"] = "zone",
        ["mid zone"] = "zone",
        ["outside zone"] = "zone",
        ["split zone"] = "zone",
        ["insert zone"] = "zone",
        ["zone lock"] = "zone",
        ["zone read"] = "option",
        ["outside zone read"] = "option",
        ["arc read"] = "option",
        ["power read"] = "option",
        ["speed option"] = "option",
        ["inside veer"] = "option",
        ["outside veer"] = "option",
        ["midline"] = "option",
        ["triple option"] = "option",
        ["bash"] = "option",
        ["power"] = "gap",
        ["counter gt"] = "gap",
        ["counter gh"] = "gap",
        ["duo"] = "gap",
        ["down g"] = "gap",
        ["pin pull"] = "gap",
        ["trap"] = "gap",
        ["long trap"] = "gap",
        ["wham"] = "gap",
        ["dart"] = "gap",
        ["iso"] = "gap",
        ["lead draw"] = "gap",
        ["draw"] = "gap",
        ["wedge"] = "gap",
        ["dive"] = "gap",
        ["buck sweep"] = "perimeter",
        ["toss sweep"] = "perimeter",
        ["jet sweep"] = "perimeter",
        ["rocket toss"] = "perimeter",
        ["sweep"] = "perimeter",
        ["counter trap"] = "gap",
        ["qb zone"] = "quarterback run",
        ["sneak"] = "quarterback run",
        ["qb power"] = "quarterback run",
        ["qb counter"] = "quarterback run",
        ["qb draw"] = "quarterback run",
        ["qb lead"] = "quarterback run",
        ["qb sweep"] = "quarterback run",
    };

    /// <param name="scheme">A canonical scheme name, with spaces.</param>
    public static string Of(string scheme) => s_families.GetValueOrDefault(scheme, "other");
}
