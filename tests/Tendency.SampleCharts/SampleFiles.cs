using Tendency.SampleCharts.Charts;

namespace Tendency.SampleCharts;

/// <summary>Every generated file of sample-logs: its path below that folder and its bytes.</summary>
public static class SampleFiles
{
    public static IEnumerable<(string Path, byte[] Bytes)> All()
    {
        foreach (var sheet in Sheets(SampleSets.PortHalden))
        {
            yield return ($"port-halden/{sheet.FileName}", Utf8(sheet.ToText()));
        }

        foreach (var sheet in Sheets(SampleSets.OurOffense))
        {
            yield return ($"our-team/offense/{sheet.FileName}", Utf8(sheet.ToText()));
        }

        foreach (var sheet in Sheets(SampleSets.OurDefense))
        {
            yield return ($"our-team/defense/{sheet.FileName}", Utf8(sheet.ToText()));
        }
    }

    internal static IEnumerable<ChartSheet> Sheets(IReadOnlyList<SampleGame> games) =>
        games.Select((game, i) => ChartSheet.Of(
            $"{i + 1:00}-{game.Fixture.Opponent.Name.ToLowerInvariant().Replace(' ', '-')}.csv",
            game.Snaps.Select((snap, play) => new ChartedSnap(game.Fixture.Opponent.Name, play + 1, game.Fixture.Clips, snap))));

    private static byte[] Utf8(string text) => System.Text.Encoding.UTF8.GetBytes(text);
}
