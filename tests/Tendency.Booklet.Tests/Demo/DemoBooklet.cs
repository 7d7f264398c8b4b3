using Tendency.Booklet.Blocks;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Tests.Demo;

/// <summary>A booklet that uses every block, with invented figures: what the printers are tested and looked at with.</summary>
internal static class DemoBooklet
{
    public static readonly DateTimeOffset Dated = new(2026, 11, 16, 0, 0, 0, TimeSpan.Zero);

    public static ScoutingBooklet Make(params Page[] extra) => new(
        "Port Halden",
        "offense",
        "Port Halden offense, scouting booklet",
        "4 games, 286 plays, charted to Sun 15 Nov, chart rev 3",
        [
            new Section("Brief", [DemoBrief.Page]),
            new Section("Run or pass", [DemoTables.DownDistance, DemoPictures.Formations]),
            new Section("Run game", [DemoPictures.RunGame, DemoTables.FrontCheck, DemoPictures.FrontCard]),
            new Section("Tells and habits", [DemoTables.Tells, DemoPictures.Steadiness]),
            new Section("On the field", [DemoSheet.Page]),
            new Section("Reading", [DemoTables.SmallSamples, .. extra]),
        ],
        Dated)
    {
        Author = "The staff",
        Occasion = "Game Friday 20 Nov",
    };

    public static ScoutingBooklet Of(params Page[] pages) => new("Port Halden", "offense", "Port Halden offense", "4 games, 286 plays", [new Section("Pages", pages)], Dated);

    /// <summary>Wilson's 95% interval, so that the demo's bars have honest lengths.</summary>
    public static Share Share(int count, int plays, double? baseline = null)
    {
        if (plays == 0)
        {
            return new Share(0, 0, null, baseline);
        }

        const double Z = 1.959963984540054;
        double n = plays;
        var p = count / n;
        var middle = (p + (Z * Z / (2 * n))) / (1 + (Z * Z / n));
        var half = Z / (1 + (Z * Z / n)) * Math.Sqrt((p * (1 - p) / n) + (Z * Z / (4 * n * n)));
        return new Share(count, plays, new Interval(count == 0 ? 0 : middle - half, count == plays ? 1 : middle + half), baseline);
    }

    public static PlayList Plays(params (string Game, int[] Numbers)[] games) =>
        new([.. games.SelectMany(game => game.Numbers.Select(number => new PlayRef(game.Game, number, $"{game.Game} {number}")))], Short);

    public static readonly IReadOnlyDictionary<string, string> Short = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Calder Bay"] = "G1",
        ["Eastmoor"] = "G2",
        ["Quarry Hill"] = "G3",
        ["Ash Ferry"] = "G4",
    };
}
