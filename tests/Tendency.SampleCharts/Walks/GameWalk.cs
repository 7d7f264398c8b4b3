using Tendency.SampleCharts.Outcomes;

namespace Tendency.SampleCharts.Walks;

/// <summary>
/// A whole game, both offenses, snap by snap: 4 quarters of 15:00, kicks decided and kicked but not charted,
/// scores kept. One object walks one game.
/// </summary>
public sealed class GameWalk(Team first, Team second, int game, Chance chance)
{
    private readonly Team[] _teams = [first, second];
    private readonly int[] _score = new int[2];
    private readonly int[] _series = new int[2];
    private readonly List<Snap> _snaps = [];
    private int _quarter;
    private int _clock;

    /// <summary>The final score, first team's points and second's. Valid after <see cref="Play"/>.</summary>
    public (int First, int Second) Score => (_score[0], _score[1]);

    public IReadOnlyList<Snap> Play()
    {
        var receiver = chance.Between(0, 1);
        PlayHalf(receiver, quarter: 1);
        PlayHalf(1 - receiver, quarter: 3);
        return _snaps;
    }

    private void PlayHalf(int receiver, int quarter)
    {
        _quarter = quarter;
        _clock = 900;
        Possession? ball = AfterKickoff(receiver);
        while (ball is { } possession)
        {
            ball = Possess(possession);
        }
    }

    private Possession? Possess(Possession ball)
    {
        if (!ClockLeft())
        {
            return null;
        }

        var team = ball.Team;
        _series[team]++;
        var (down, toGo) = DriveWalk.FirstDown(ball.ToGoal);
        var toGoal = ball.ToGoal;
        var hash = chance.Pick(('L', 0.3), ('M', 0.4), ('R', 0.3));
        var previous = "";
        while (true)
        {
            if (!ClockLeft())
            {
                return null;
            }

            var at = new Situation(
                game, _series[team], _quarter, _clock, _score[team] - _score[1 - team], down, toGo, toGoal, hash, previous);
            if (down == 4 && Kick(at, team) is { } kicked)
            {
                return kicked;
            }

            var snap = SnapBall.Take(_teams[team], _teams[1 - team], at, chance);
            _snaps.Add(snap);
            var seconds = DriveWalk.Seconds(at, snap.Call, snap.Outcome, chance);
            if (snap.Outcome.Touchdown)
            {
                _clock -= chance.Between(5, 9);
                return AfterTouchdown(at, team);
            }

            if (snap.Outcome.Result is "interception" or "fumble")
            {
                _clock -= chance.Between(6, 12);
                return Turnover(at, snap.Outcome, team);
            }

            hash = DriveWalk.NextHash(at, snap.Call, snap.Outcome, chance);
            (down, toGo, toGoal) = DriveWalk.Next(at, snap.Outcome);
            if (down > 4)
            {
                _clock -= chance.Between(5, 9);
                return new Possession(1 - team, 100 - toGoal);
            }

            _clock -= seconds;
            previous = snap.Call.Kind == "none" ? previous : snap.Call.RunBall ? "run" : "pass";
        }
    }

    /// <summary>Rolls into the next quarter where there is one in this half; false when the half is over.</summary>
    private bool ClockLeft()
    {
        if (_clock > 0)
        {
            return true;
        }

        if (_quarter is 2 or 4)
        {
            return false;
        }

        _quarter++;
        _clock = 900;
        return true;
    }

    /// <summary>Fourth down: a kick if the book says so, null to go for it.</summary>
    private Possession? Kick(Situation at, int team)
    {
        var must = at is { Quarter: 4, Margin: < 0 } && (at.Clock < 150 || (at.Clock < 300 && at.Margin < -8));
        if (must && (at.ToGoal > 30 || at.Margin < -3))
        {
            return null;
        }

        var bold = at.ToGo <= 1 && at.ToGoal <= 62 ? 0.55 : at.ToGo <= 3 && at.ToGoal is >= 34 and <= 52 ? 0.5 : 0.005;
        if (chance.Roll(at.ToGoal <= 3 ? 0.4 : bold))
        {
            return null;
        }

        _clock -= chance.Between(5, 9);
        if (at.ToGoal <= 33)
        {
            if (!chance.Roll(0.97 - (0.011 * at.ToGoal)))
            {
                return new Possession(1 - team, Math.Min(80, 100 - at.ToGoal - 7));
            }

            _score[team] += 3;
            return AfterKickoff(1 - team);
        }

        var lands = at.ToGoal - chance.Between(34, 48);
        return new Possession(1 - team, lands <= 0 ? 80 : Math.Min(97, 100 - lands));
    }

    private Possession? AfterTouchdown(Situation at, int team)
    {
        _score[team] += 6;
        var margin = _score[team] - _score[1 - team];
        if (chance.Roll(at.Quarter >= 3 && margin is -2 or -5 or 1 or 5 ? 0.7 : 0.06))
        {
            var (quarter, clock) = _clock > 0 ? (_quarter, _clock) : (_quarter, 0);
            var tryAt = new Situation(game, _series[team], quarter, clock, margin, 0, 3, 3, 'M', at.PreviousCall);
            var snap = SnapBall.Take(_teams[team], _teams[1 - team], tryAt, chance);
            _snaps.Add(snap);
            _score[team] += snap.Outcome.Touchdown ? 2 : 0;
        }
        else
        {
            _score[team] += chance.Roll(0.96) ? 1 : 0;
        }

        return AfterKickoff(1 - team);
    }

    private Possession Turnover(Situation at, Outcome outcome, int team)
    {
        if (outcome.Result == "fumble")
        {
            return new Possession(1 - team, Math.Clamp(100 - (at.ToGoal - (outcome.Gain ?? 0)), 1, 99));
        }

        if (chance.Roll(0.08))
        {
            _score[1 - team] += 7;
            return AfterKickoff(team);
        }

        var caught = at.ToGoal - chance.Between(2, 24) + chance.Between(0, 14);
        return new Possession(1 - team, caught <= 0 ? 80 : Math.Clamp(100 - caught, 8, 95));
    }

    private Possession AfterKickoff(int receiver)
    {
        var touchback = chance.Roll(0.55);
        _clock -= touchback ? 0 : chance.Between(4, 8);
        return new Possession(receiver, touchback ? 75 : chance.Between(64, 84));
    }

    private readonly record struct Possession(int Team, int ToGoal);
}
