using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Simulations.Charts;

/// <summary>
/// One offense's season as public play-by-play shows it: down, distance, ball, clock, score, gun or under center, tempo; nothing of
/// formations. How calls depend on them is written here apart from the program's own idea of usual calls, moved at random for the
/// league and again for each team, with a part nobody charted. From memory; the scale is set so that the base rate's log loss is near
/// 0.67 and down and distance's near 0.62, as published for real seasons.
/// </summary>
internal sealed class ProfessionalSeason
{
    private readonly Random _chance;
    private readonly double[] _league;
    private readonly double[] _team;
    private readonly Dictionary<string, List<string>> _words = [];
    private readonly Dictionary<string, List<int?>> _numbers = [];
    private readonly List<double> _odds = [];

    private ProfessionalSeason(int leagueSeed, int teamSeed)
    {
        var league = new Random(leagueSeed);
        _chance = new Random((leagueSeed * 1009) + teamSeed);
        _league = [.. Enumerable.Range(0, 16).Select(_ => 0.25 * Normal(league))];
        _team = [.. Enumerable.Range(0, 16).Select(_ => 0.3 * Normal(_chance))];
    }

    public static PlayLog Team(int leagueSeed, int teamSeed, int games)
    {
        var season = new ProfessionalSeason(leagueSeed, teamSeed);
        for (var game = 1; game <= games; game++)
        {
            season.AddGame($"G{game:00}");
        }

        var log = new PlayLog(
            season._odds.Count,
            season._words.Select(pair => CategoryColumn.FromWords(pair.Key, pair.Value)),
            season._numbers.Select(pair => NumberColumn.Create(pair.Key, pair.Value)),
            []);
        return DerivedColumns.AddTo(log, WeekPlan.Default, Glossary.BuiltIn);
    }

    private void AddGame(string game)
    {
        var (swing, margin, series, left) = (0.25 * Normal(_chance), 0, 0, 3600.0);
        var play = 0;
        while (left > 0)
        {
            series++;
            var (down, distance, toGoal) = (1, 10, 20 + _chance.Next(0, 65));
            while (down < 5 && toGoal > 0 && left > 0)
            {
                if (down == 4 && !(distance <= 2 && toGoal < 60 && _chance.NextDouble() < 0.3) && !(left < 240 && margin < 0))
                {
                    break;
                }

                var quarter = Math.Min(4, 1 + (int)((3600 - left) / 900));
                var clock = (int)(left - ((4 - quarter) * 900));
                var hurry = (quarter == 2 && clock < 120) || (left < 300 && margin < 0);
                var gun = _chance.NextDouble() < Logistic(0.35 + (down == 3 ? 1.5 * Math.Min(1, (distance - 2) / 4.0) : 0) + (down == 2 ? 0.05 * (distance - 6) : 0) + (hurry ? 1.6 : 0) + (1.2 * _team[0]) - (toGoal <= 2 ? 1.5 : 0));
                var noHuddle = _chance.NextDouble() < (hurry ? 0.6 : 0.07);
                var pass = _chance.NextDouble() < Logistic(PassOdds(down, distance, toGoal, quarter, clock, margin, gun, noHuddle) + swing + (0.35 * Normal(_chance)));
                Add(game, ++play, series, quarter, clock, margin, down, Math.Min(distance, toGoal), toGoal, gun, noHuddle, pass);
                var gain = pass ? (_chance.NextDouble() < 0.38 ? 0 : (int)Math.Round(-9 * Math.Log(1 - _chance.NextDouble())) + 1) : (int)Math.Round(4.2 + (4 * Normal(_chance)));
                left -= pass && gain == 0 ? 6 : hurry ? 18 : 37;
                toGoal -= gain;
                (down, distance) = gain >= distance ? (1, Math.Min(10, toGoal)) : (down + 1, distance - gain);
            }

            margin += toGoal <= 0 ? 7 : toGoal < 35 && down >= 4 ? 3 : 0;
            left -= 170;
            var theirs = _chance.NextDouble();
            margin -= theirs < 0.17 ? 7 : theirs < 0.3 ? 3 : 0;
        }
    }

    private double PassOdds(int down, int distance, int toGoal, int quarter, int clock, int margin, bool gun, bool noHuddle)
    {
        var left = ((4 - quarter) * 900) + clock;
        var odds = down switch
        {
            1 => 0.15 + (0.1 * (distance - 10)),
            2 => -0.3 + (0.09 * distance),
            3 => distance <= 1 ? -0.1 : distance == 2 ? 0.7 : 2.0 - (distance > 12 ? 0.08 * (distance - 12) : 0),
            _ => distance <= 1 ? -0.2 : 1.8,
        };
        odds += (_league[down - 1] + _team[down]) * 0.8;
        odds -= gun ? 0 : 1.45 + _league[5] + (1.3 * _team[6]) + (down >= 3 ? 0.3 : 0);
        var late = quarter == 4 ? 1 - (clock / 1400.0) : quarter == 3 ? 0.22 : 0.1;
        odds -= (1.15 + _league[7] + _team[7]) * late * Math.Clamp(margin / 8.0, -1.3, 1.3);
        odds += quarter == 2 && clock < 120 ? 0.7 + _team[8] : 0;
        odds += left < 120 && margin is < 1 and > -9 ? 0.7 : left < 300 && margin > 0 ? -0.4 : 0;
        odds += toGoal <= 5 ? -0.35 + _team[9] : toGoal <= 10 ? -0.1 : toGoal > 95 ? -0.4 : 0;
        odds += noHuddle ? 0.1 + _team[10] : 0;
        return odds + _league[11] + (0.8 * _team[11]);
    }

    private void Add(string game, int play, int series, int quarter, int clock, int margin, int down, int distance, int toGoal, bool gun, bool noHuddle, bool pass)
    {
        Word(Game, game);
        Word(Down, $"{down}");
        Word(BackSet, gun ? "gun" : "under");
        Word(Tempo, noHuddle ? "no huddle" : "huddle");
        Word(Call, pass ? "pass" : "run");
        Number(Play, play);
        Number(Series, series);
        Number(Quarter, quarter);
        Number(Clock, clock);
        Number(Margin, margin);
        Number(Distance, Math.Max(1, distance));
        Number(YardsToGoal, Math.Clamp(toGoal, 1, 99));
        _odds.Add(0);
    }

    private void Word(string name, string value) => (_words.TryGetValue(name, out var list) ? list : _words[name] = []).Add(value);

    private void Number(string name, int value) => (_numbers.TryGetValue(name, out var list) ? list : _numbers[name] = []).Add(value);

    private static double Logistic(double odds) => 1 / (1 + Math.Exp(-odds));

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
