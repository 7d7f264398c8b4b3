using Tendency.Breakdown.Charts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>What these charts usually do, so that a habit of the charter is not reported row by row.</summary>
internal sealed class Usual
{
    private const double NearlyAlways = 0.95;

    // Looked up once a formation, not once a row.
    private readonly Dictionary<(ushort, string, string), (string, string)> _likelier = [];
    private ILookup<ushort, int>? _fitting;
    private Dictionary<(ushort, ushort), string>? _sets;

    public required IReadOnlySet<string> RunsHaveSchemes { get; init; }

    public required IReadOnlySet<string> RunsHaveSides { get; init; }

    public required bool OptionsHaveSchemes { get; init; }

    public required bool ReadsAreCharted { get; init; }

    /// <summary>Whether a back side of none stands often beside gun, pistol or under.</summary>
    public required bool NoneInSets { get; init; }

    public required bool PistolIsBehind { get; init; }

    public required bool EmptyHasNoBack { get; init; }

    public static Usual Of(AuditedCharts charts)
    {
        var log = charts.Log;
        bool Is(int row, string call) => charts.Calls[row] == call && log.Category(Down)[row] != "try";
        bool Filled(int row, string column) => log.Category(column).Codes[row] != 0;
        var rows = Enumerable.Range(0, log.Rows).ToArray();
        HashSet<string> Games(string column) => [.. charts.Games
            .Where(game => Share(game.Rows.Where(row => Is(row, "run")), row => Filled(row, column)) >= NearlyAlways).Select(game => game.Name)];
        return new Usual
        {
            RunsHaveSchemes = Games(RunScheme),
            RunsHaveSides = Games(RunSide),
            OptionsHaveSchemes = Share(rows.Where(row => Is(row, "rpo")), row => Filled(row, RunScheme)) > 0.5,
            ReadsAreCharted = Share(rows.Where(row => log.Category(RunScheme)[row] == "zone read"), row => log.Category(Read)[row] is not ("" or "none")) > 0.9,
            NoneInSets = Share(rows.Where(row => log.Category(BackSide)[row] == "none"), row => log.Category(BackSet)[row] is "gun" or "pistol" or "under") > 0.2,
            PistolIsBehind = Share(rows.Where(row => log.Category(BackSet)[row] == "pistol"), row => log.Category(BackSide)[row] is "middle" or "none" or "") >= 0.9,
            EmptyHasNoBack = Share(
                rows.Where(row => Filled(row, BackSide) && charts.Glossary.FormationFamily(log.Category(Formation)[row]).StartsWith("empty", StringComparison.Ordinal)),
                row => log.Category(BackSide)[row] == "none") >= 0.8,
        };
    }

    /// <summary>Of personnel and attached, the one the same formation usually has otherwise, and what it usually is.</summary>
    public (string Column, string Value) Likelier(PlayLog log, int row)
    {
        var key = (log.Category(Formation).Codes[row], Kind(log.Category(Attached)[row]), log.Category(Personnel)[row]);
        if (_likelier.TryGetValue(key, out var known))
        {
            return known;
        }

        _fitting ??= Enumerable.Range(0, log.Rows).Where(other => Fits(log, other)).ToLookup(other => log.Category(Formation).Codes[other]);
        var like = _fitting[key.Item1];
        var sameAttached = like.Where(other => Kind(log.Category(Attached)[other]) == key.Item2).ToArray();
        var samePeople = like.Where(other => log.Category(Personnel)[other] == key.Item3).ToArray();
        return _likelier[key] = sameAttached.Length >= samePeople.Length
            ? (Personnel, Most(sameAttached.Select(other => log.Category(Personnel)[other])))
            : (Attached, Most(samePeople.Select(other => log.Category(Attached)[other])));
    }

    /// <summary>The set in which the row's formation usually stands with a back at its side.</summary>
    public string SetOf(PlayLog log, int row)
    {
        _sets ??= Enumerable.Range(0, log.Rows).Where(other => log.Category(BackSet)[other] is not ("empty" or ""))
            .GroupBy(other => (log.Category(Formation).Codes[other], log.Category(BackSide).Codes[other]))
            .ToDictionary(group => group.Key, group => Most(group.Select(other => log.Category(BackSet)[other])));
        return _sets.GetValueOrDefault((log.Category(Formation).Codes[row], log.Category(BackSide).Codes[row]), "");
    }

    private static string Kind(string attached) => attached is "L" or "R" ? "one" : attached;

    private static bool Fits(PlayLog log, int row) =>
        log.Category(Personnel)[row] is { Length: 2 } people && (log.Category(Attached)[row] switch { "both" => 2, "L" or "R" => 1, _ => 0 }) <= people[1] - '0';

    private static string Most(IEnumerable<string> words) =>
        words.Where(word => word.Length > 0).GroupBy(word => word, StringComparer.Ordinal).OrderByDescending(g => g.Count()).FirstOrDefault()?.Key ?? "";

    private static double Share(IEnumerable<int> rows, Func<int, bool> holds)
    {
        var (all, held) = (0, 0);
        foreach (var row in rows)
        {
            all++;
            held += holds(row) ? 1 : 0;
        }

        return all == 0 ? 0 : (double)held / all;
    }
}
