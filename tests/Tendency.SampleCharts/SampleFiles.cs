using System.Globalization;
using System.Text;
using Tendency.SampleCharts.Charts;
using Tendency.SampleCharts.Teams;
using Tendency.SampleCharts.Tired;

namespace Tendency.SampleCharts;

/// <summary>Every generated file of sample-logs: its path below that folder and its bytes.</summary>
public static class SampleFiles
{
    private const ulong TiredSeed = 20261122;

    public static IEnumerable<(string Path, byte[] Bytes)> All()
    {
        foreach (var sheet in Sheets(SampleSets.PortHalden))
        {
            yield return ($"port-halden/{sheet.FileName}", Utf8(sheet.ToText()));
        }

        var tired = TiredAssistant.Chart(Sheets(SampleSets.PortHalden), TiredSeed);
        foreach (var file in tired)
        {
            yield return ($"port-halden-tired/{file.FileName}", file.Bytes);
        }

        yield return ("planted/port-halden-tired.csv", Utf8(MistakeList([.. tired.SelectMany(file => file.Mistakes)])));

        yield return ("planted/tells.csv", Utf8(TellList()));

        foreach (var sheet in Sheets(SampleSets.OurOffense))
        {
            yield return ($"our-team/offense/{sheet.FileName}", Utf8(sheet.ToText()));
        }

        foreach (var sheet in Sheets(SampleSets.OurDefense))
        {
            yield return ($"our-team/defense/{sheet.FileName}", Utf8(sheet.ToText()));
        }
    }

    /// <summary>A set's games as sheets, one a game, named as in sample-logs.</summary>
    public static IReadOnlyList<ChartSheet> Sheets(IReadOnlyList<SampleGame> games) =>
    [
        .. games.Select((game, i) => ChartSheet.Of(
            $"{i + 1:00}-{game.Fixture.Opponent.Name.ToLowerInvariant().Replace(' ', '-')}.csv",
            game.Snaps.Select((snap, play) => new ChartedSnap(game.Fixture.Opponent.Name, play + 1, game.Fixture.Clips, snap)))),
    ];

    private static string MistakeList(IReadOnlyList<Mistake> mistakes)
    {
        string[] headers = ["file", "line", "column", "wrong", "right", "what"];
        string[][] rows = [.. mistakes.Select(m => new[] { m.File, m.Line.ToString(CultureInfo.InvariantCulture), m.Column, m.Wrong, m.Right, m.What })];
        return new ChartSheet("mistakes", headers, rows).ToText();
    }

    private static string TellList()
    {
        string[] headers = ["set", "tell", "games", "plays", "count", "true_probability"];
        (string Set, IReadOnlyList<PlantedTell> Tells, IReadOnlyList<SampleGame> Games)[] sets =
        [
            ("port-halden", PortHalden.Planted, SampleSets.PortHalden),
            ("our-team/offense", MarrowPoint.Planted, SampleSets.OurOffense),
            ("our-team/defense", MarrowPointDefense.Planted, SampleSets.OurDefense),
        ];
        string[][] rows = [.. sets.SelectMany(set => set.Tells.Select(tell =>
        {
            var (plays, count) = tell.Observed(set.Games.SelectMany(game => game.Snaps));
            return new[]
            {
                set.Set, tell.Name, $"{tell.FirstGame}-{Math.Min(tell.LastGame, set.Games.Count)}",
                plays.ToString(CultureInfo.InvariantCulture), count.ToString(CultureInfo.InvariantCulture),
                tell.Probability.ToString("0.00", CultureInfo.InvariantCulture),
            };
        }))];
        return new ChartSheet("tells", headers, rows).ToText();
    }

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
