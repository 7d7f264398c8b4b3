namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>The groups of schemes whose share can turn the choice of a front.</summary>
/// <param name="Runs">What its plays are called in a sentence.</param>
public sealed record RunFamily(string Name, string Runs, Func<RunScheme, bool> Holds)
{
    public static IReadOnlyList<RunFamily> All { get; } =
    [
        new("gap", "gap schemes", s => s.Family == "gap"),
        new("pull", "pulling schemes", s => s.HasPuller),
        new("outside zone", "outside zones", s => s.Name is "outside zone" or "outside zone read"),
        new("option", "option runs", s => s.IsOption),
    ];
}
