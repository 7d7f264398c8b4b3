using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>How many snaps each stratum of a script takes from each formation.</summary>
/// <remarks>
/// Largest remainders inside every stratum would give each scheme of one or two snaps its commonest formation, and the script as a whole too
/// much of it. So snaps then move between the formations of a stratum, straying as little as can be from its own mix, until the whole script has
/// each formation as often as its largest remainder over all plays says, or no move brings it nearer: a formation seen only with schemes that
/// get no snap stays out.
/// </remarks>
internal sealed class FormationSeats
{
    private readonly IReadOnlyList<ScriptStratum> _strata;
    private readonly Dictionary<string, int>[] _seats;
    private readonly bool _mayRepeat;

    private FormationSeats(IReadOnlyList<ScriptStratum> strata, bool mayRepeat)
    {
        (_strata, _mayRepeat) = (strata, mayRepeat);
        _seats = [.. strata.Select(Alone)];
    }

    /// <summary>Snaps by formation, one table a stratum.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, int>> Of(PlayLog plays, IReadOnlyList<ScriptStratum> strata, int snaps)
    {
        var seats = new FormationSeats(strata, mayRepeat: snaps > plays.Rows);
        var formations = CrossTab.Values(plays, ColumnNames.Formation);
        if (formations.Count > 0)
        {
            var wanted = LargestRemainder.Of([.. formations.Select(f => f.Count)], snaps);
            seats.MoveTowards(formations.Zip(wanted).ToDictionary(pair => pair.First.Value, pair => pair.Second, StringComparer.Ordinal));
        }

        return seats._seats;
    }

    private static Dictionary<string, int> Alone(ScriptStratum stratum)
    {
        var formations = stratum.Rows.OrderByDescending(pair => pair.Value.Length).ToArray();
        var seats = LargestRemainder.Of([.. formations.Select(pair => pair.Value.Length)], stratum.Snaps);
        return formations.Zip(seats).ToDictionary(pair => pair.First.Key, pair => pair.Second, StringComparer.Ordinal);
    }

    private void MoveTowards(Dictionary<string, int> wanted)
    {
        while (CheapestWay(wanted) is { } way)
        {
            foreach (var (stratum, from, to) in way)
            {
                _seats[stratum][from]--;
                _seats[stratum][to]++;
            }
        }
    }

    /// <summary>The chain of moves from a formation the script has too often to one it has too seldom that strays least (Bellman and Ford). Each takes one off the excess, so chains end.</summary>
    private List<Move>? CheapestWay(Dictionary<string, int> wanted)
    {
        var excess = wanted.ToDictionary(pair => pair.Key, pair => _seats.Sum(s => s.GetValueOrDefault(pair.Key)) - pair.Value, StringComparer.Ordinal);
        var ways = excess.Where(pair => pair.Value > 0).ToDictionary(pair => pair.Key, _ => (Cost: 0.0, Way: new List<Move>()), StringComparer.Ordinal);
        var moves = CheapestMoves();
        for (var length = 1; length < excess.Count; length++)
        {
            foreach (var (move, cost) in moves)
            {
                if (ways.TryGetValue(move.From, out var way) && (!ways.TryGetValue(move.To, out var known) || way.Cost + cost < known.Cost - 1e-9))
                {
                    ways[move.To] = (way.Cost + cost, [.. way.Way, move]);
                }
            }
        }

        return excess.Where(pair => pair.Value < 0 && ways.ContainsKey(pair.Key)).Select(pair => ways[pair.Key]).OrderBy(way => way.Cost).Select(way => way.Way).FirstOrDefault();
    }

    /// <summary>From each formation to each other, the stratum where the move strays least.</summary>
    private (Move Move, double Cost)[] CheapestMoves()
    {
        var moves =
            from stratum in Enumerable.Range(0, _strata.Count)
            from @from in _seats[stratum].Keys
            where _seats[stratum][@from] > 0
            from to in _seats[stratum].Keys
            where to != @from && (_mayRepeat || _seats[stratum][to] < _strata[stratum].Rows[to].Length)
            select (Move: new Move(stratum, @from, to), Cost: Strain(stratum, @from, -1) + Strain(stratum, to, +1));
        return [.. moves.GroupBy(move => (move.Move.From, move.Move.To)).Select(group => group.MinBy(move => move.Cost))];
    }

    /// <summary>By how much the squared distance from the stratum's own mix grows.</summary>
    private double Strain(int stratum, string formation, int step)
    {
        var all = _strata[stratum].Rows.Values.Sum(rows => rows.Length);
        var off = _seats[stratum][formation] - ((double)_strata[stratum].Snaps * _strata[stratum].Rows[formation].Length / all);
        return (2 * step * off) + 1;
    }

    private readonly record struct Move(int Stratum, string From, string To);
}
