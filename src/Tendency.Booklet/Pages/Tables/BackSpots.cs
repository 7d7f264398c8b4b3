using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Where the back stands before the snap, a row a spot; spots never seen are left out.</summary>
internal static class BackSpots
{
    private static readonly (string Value, string Name, string Remark, string Spoken)[] s_spots =
    [
        ("weak", "Weak", "", "with the back weak"),
        ("middle", "Middle", "behind the QB", "with the back behind the QB"),
        ("strong", "Strong", "", "with the back strong"),
        ("none", "No back", "", "from empty"),
    ];

    public static IEnumerable<Situation> Of(PlayLog charted) =>
        s_spots.Select(spot => new Situation(spot.Name, spot.Remark, charted.Where(ColumnNames.BackSide, spot.Value)) { Spoken = spot.Spoken })
            .Where(spot => spot.Plays.Rows > 0);
}
