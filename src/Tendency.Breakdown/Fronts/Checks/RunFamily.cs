namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>The groups of schemes whose share can turn the choice of a front.</summary>
public sealed record RunFamily(string Name, Func<RunScheme, bool> Holds)
{
    public static IReadOnlyList<RunFamily> All { get; } =
    [
        new("gap", s => s.Family == "gap"),
        new("pull", s => s.HasPuller),
        new("outside zone", s => s.Name is "outside zone" or "outside zone read"),
        new("option", s => s.IsOption),
    ];
}
