namespace Tendency.Breakdown.Fronts;

/// <summary>A front's name as it stands in a sentence.</summary>
public static class FrontWord
{
    /// <summary>Capitalized, because "over", "under" and "tight" read as words of the sentence: "over" becomes "Over".</summary>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length == 0 ? "" : char.ToUpperInvariant(name[0]) + name[1..];
    }
}
