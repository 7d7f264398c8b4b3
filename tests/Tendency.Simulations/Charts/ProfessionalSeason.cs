using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Simulations.Charts;

/// <summary>
/// One offense's season as public play-by-play shows it: down, distance, ball, clock, score, gun or under center, tempo; nothing of
/// formations. How calls depend on them is written here apart from the program's own idea of usual calls, moved at random for the
/// league and again for each team, with a part nobody charted. Shares of gun, no huddle and pass, and how far teams differ, are rounded from
/// public play-by-play of one professional season's first six weeks, 2022, about 11,600 snaps, counted for this. There, each game from the
/// four before: base rate's log loss 0.669, a plain regression's on down and distance 0.613, on all 0.552, a plain forest's 0.558.
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
        _league = [.. Enumerable.Range(0, 16).Select(_ => 0.15 * Normal(league))];
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
        var (swing, margin, series, left) = (0.17 * Normal(_chance), 0, 0, 3600.0);
        var play = 0;
        while (left > 0)
        {
            series++;
            var (down, distance, toGoal) = (1, 10, 50 + _chance.Next(0, 41));
            while (down < 5 && toGoal > 0 && left > 0)
            {
                if (down == 4 && !(distance <= 2 && toGoal < 60 && _chance.NextDouble() < 0.3) && !(left < 240 && margin < 0))
                {
                    break;
                }

                var quarter = Math.Min(4, 1 + (int)((3600 - left) / 900));
                var clock = (int)(left - ((4 - quarter) * 900));
                var hurry = (quarter == 2 && clock < 120) || (left < 300 && margin < 0);
                var gun = _chance.NextDouble() < Logistic(GunOdds(down, distance) + (hurry ? 2.3 : 0) + (2 * _team[0]));
                var noHuddle = _chance.NextDouble() < (hurry ? 0.25 : 0.09);
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
            margin -= theirs < 0.22 ? 7 : theirs < 0.37 ? 3 : 0;
        }
    }

    private static double GunOdds(int down, int distance) => down switch
    {
        1 => 0,
        2 => Math.Clamp(0.25 * (distance - 4), 0, 1.6),
        3 => distance <= 1 ? -0.4 : distance <= 3 ? 2 : 3.6,
        _ => distance <= 1 ? -0.8 : 2.2,
    };

    private double PassOdds(int down, int distance, int toGoal, int quarter, int clock, int margin, bool gun, bool noHuddle)
    {
        var left = ((4 - quarter) * 900) + clock;
        var odds = down switch
        {
            1 => 0.7 + (0.08 * (distance - 10)),
            2 => 0.05 + (0.17 * Math.Min(distance, 13)),
            3 => distance <= 1 ? -0.1 : distance == 2 ? 0.9 : distance == 3 ? 1.4 : distance > 15 ? 2.4 : 3,
            _ => distance <= 1 ? 0.3 : 2.2,
        };
        odds += (_league[down - 1] + _team[down]) * 0.8;
        odds -= gun ? 0 : 1.25 + _league[5] + _team[6] + (down >= 3 ? 0.3 : 0);
        var late = quarter == 4 ? 1 - (clock / 1150.0) : quarter == 3 ? 0.15 : 0.05;
        odds -= (1.4 + _league[7] + _team[7]) * late * Math.Clamp(margin / 8.0, -1.3, 1.3);
        odds += gun && quarter == 2 && clock < 120 ? (clock < 60 ? 1.5 : 0.8) + _team[8] : 0;
        odds += gun && left < 120 && margin is < 1 and > -9 ? 0.4 : left < 300 && margin > 0 ? -0.6 : 0;
        odds += toGoal <= 5 ? _team[9] : toGoal <= 10 ? -0.1 : toGoal <= 40 ? -0.2 : toGoal > 90 ? -0.5 : 0;
        odds += noHuddle ? 0.25 + _team[10] : 0;
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
