using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// One shape of the playbook. TightEnd and Wing are strong, weak, both or none, turned into L and R by the call's strength.
/// Set is where the passer stands for this card: gun, pistol, under or empty.
/// </summary>
public sealed record FormationCard(string Formation, string Personnel, string Set, string TightEnd = "none", string Wing = "none")
{
    /// <summary>The look on the field: the strength goes to the wide side six times in ten.</summary>
    public Look At(Situation at, double backStrong, string motion, string tempo, Chance chance)
    {
        var right = at.Hash switch { 'L' => 0.62, 'R' => 0.38, _ => 0.5 };
        var strength = chance.Roll(right) ? 'R' : 'L';
        var back = Set switch
        {
            "empty" => "none",
            "gun" => chance.Roll(backStrong) ? "strong" : "weak",
            _ => "middle",
        };
        return new Look(Personnel, Formation, strength, Set, back, Side(TightEnd, strength), Side(Wing, strength), motion, tempo);
    }

    private static string Side(string side, char strength) => side switch
    {
        "strong" => strength.ToString(),
        "weak" => Sides.Other(strength).ToString(),
        _ => side,
    };
}

/// <summary>The shapes the invented teams share. Names are words a glossary of the trade knows.</summary>
internal static class Cards
{
    public static readonly FormationCard Doubles = new("doubles", "11", "gun", TightEnd: "strong");
    public static readonly FormationCard DoublesOpen = new("doubles", "10", "gun");
    public static readonly FormationCard DoublesPistol = new("doubles", "11", "pistol", TightEnd: "strong");
    public static readonly FormationCard Trips = new("trips", "11", "gun");
    public static readonly FormationCard TripsPistol = new("trips", "11", "pistol");
    public static readonly FormationCard TripsClosed = new("trips closed", "11", "gun", TightEnd: "strong");
    public static readonly FormationCard Nub = new("nub trips", "11", "gun", TightEnd: "weak");
    public static readonly FormationCard Bunch = new("bunch", "11", "gun");
    public static readonly FormationCard Wing = new("wing", "12", "gun", TightEnd: "strong", Wing: "strong");
    public static readonly FormationCard Insert = new("doubles", "11", "gun", Wing: "strong");
    public static readonly FormationCard TwoTight = new("two tight", "12", "under", TightEnd: "both");
    public static readonly FormationCard TwoTightPistol = new("two tight", "12", "pistol", TightEnd: "both");
    public static readonly FormationCard Backs = new("i form", "21", "under", TightEnd: "strong");
    public static readonly FormationCard ThreeTight = new("three tight", "13", "under", TightEnd: "both", Wing: "strong");
    public static readonly FormationCard Empty = new("empty", "11", "empty");
    public static readonly FormationCard Stacked = new("stacked", "10", "gun");
}
