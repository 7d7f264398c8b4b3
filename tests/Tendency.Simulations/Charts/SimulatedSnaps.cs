using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Simulations.Charts;

/// <summary>
/// Snaps whose looks hang together as on film (personnel picks the formation, the formation the back and the tight ends) and whose calls
/// are drawn from a probability the study knows. Invented mixes; what matters is how many looks there are and how they overlap.
/// </summary>
internal sealed class SimulatedSnaps
{
    private static readonly (string Personnel, (string Formation, string Back, string Attached, string Wing)[] Cards)[] s_book =
    [
        ("11", [("Doubles", "gun", "R", "none"), ("Trips", "gun", "L", "none"), ("Bunch", "gun", "none", "none"), ("Empty", "empty", "none", "none"), ("Trips", "pistol", "R", "none")]),
        ("12", [("Wing", "gun", "R", "R"), ("Ace", "under", "both", "none"), ("Deuce", "pistol", "L", "L"), ("Doubles", "gun", "L", "none")]),
        ("21", [("Split Backs", "under", "R", "none"), ("Eye", "under", "L", "none"), ("Offset", "gun", "R", "L")]),
        ("10", [("Spread", "gun", "none", "none"), ("Trey", "gun", "none", "none")]),
        ("13", [("Heavy", "under", "both", "R")]),
    ];

    private readonly Dictionary<string, List<string>> _words = [];
    private readonly Dictionary<string, List<int?>> _numbers = [];
    private readonly Random _chance;

    private SimulatedSnaps(int seed) => _chance = new Random(seed);

    /// <param name="games">Number of games.</param>
    /// <param name="snaps">Snaps a game, about.</param>
    /// <returns>A log without calls: every look is charted, derived columns wait for <see cref="WithCalls"/>.</returns>
    public static PlayLog Looks(int seed, int games, int snaps)
    {
        var simulated = new SimulatedSnaps(seed);
        for (var game = 1; game <= games; game++)
        {
            simulated.AddGame($"G{game}", snaps + simulated._chance.Next(-6, 7));
        }

        var rows = simulated._numbers[Play].Count;
        return new PlayLog(
            rows,
            simulated._words.Select(pair => CategoryColumn.FromWords(pair.Key, pair.Value)),
            simulated._numbers.Select(pair => NumberColumn.Create(pair.Key, pair.Value)),
            []);
    }

    /// <summary>The log with one call a snap and all derived columns.</summary>
    public static PlayLog WithCalls(PlayLog looks, IEnumerable<string> calls) =>
        DerivedColumns.AddTo(looks.With(CategoryColumn.FromWords(Call, calls)), WeekPlan.Default, Glossary.BuiltIn);

    private void AddGame(string game, int snaps)
    {
        int down = 1, distance = 10, toGoal = 75, series = 1, margin = 0;
        for (var play = 1; play <= snaps; play++)
        {
            Word(Game, game);
            Number(Play, play);
            Number(Series, series);
            Number(Quarter, Math.Min(4, 1 + (4 * (play - 1) / snaps)));
            Number(Clock, 900 - (900 * (4 * (play - 1) % snaps) / snaps));
            Number(Margin, margin);
            Word(Down, $"{down}");
            Number(Distance, Math.Min(distance, toGoal));
            Number(YardsToGoal, toGoal);
            Word(Hash, Pick(("L", 0.36), ("R", 0.36), ("M", 0.28)));
            AddLook();
            var gain = Pick((-2, 0.08), (0, 0.28), (3, 0.2), (5, 0.16), (8, 0.12), (12, 0.1), (22, 0.06));
            (down, distance, toGoal) = gain >= distance ? (1, 10, toGoal - gain) : (down + 1, distance - gain, toGoal - gain);
            if (down > 4 || (down == 4 && _chance.NextDouble() < 0.85) || toGoal <= 0)
            {
                margin += toGoal <= 0 ? 7 : Pick((0, 0.6), (-7, 0.25), (-3, 0.15));
                (down, distance, toGoal, series) = (1, 10, Pick((75, 0.6), (60, 0.2), (85, 0.1), (40, 0.1)), series + 1);
            }
        }
    }

    private void AddLook()
    {
        var group = s_book[Pick((0, 0.5), (1, 0.24), (2, 0.12), (3, 0.08), (4, 0.06))];
        var (formation, back, attached, wing) = group.Cards[_chance.Next(group.Cards.Length)];
        var strength = Pick(("L", 0.45), ("R", 0.55));
        Word(Personnel, group.Personnel);
        Word(Formation, formation);
        Word(Strength, strength);
        Word(BackSet, back);
        Word(BackSide, back switch { "gun" => Pick(("strong", 0.45), ("weak", 0.55)), "empty" => "none", _ => "middle" });
        Word(Attached, strength == "L" ? Mirror(attached) : attached);
        Word(Wing, strength == "L" ? Mirror(wing) : wing);
        Word(Motion, Pick(("none", 0.6), ("jet", 0.12), ("across", 0.12), ("orbit", 0.06), ("zip", 0.1)));
        Word(Tempo, Pick(("huddle", 0.7), ("no huddle", 0.3)));
    }

    private static string Mirror(string side) => side switch { "L" => "R", "R" => "L", _ => side };

    private void Word(string name, string value) => (_words.TryGetValue(name, out var list) ? list : _words[name] = []).Add(value);

    private void Number(string name, int value) => (_numbers.TryGetValue(name, out var list) ? list : _numbers[name] = []).Add(value);

    private T Pick<T>(params (T Value, double Chance)[] mix)
    {
        var roll = _chance.NextDouble();
        foreach (var (value, chance) in mix)
        {
            roll -= chance;
            if (roll < 0)
            {
                return value;
            }
        }

        return mix[^1].Value;
    }
}
