using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Situations;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>Works out for one question what a tell costs and how to break it.</summary>
internal sealed class SelfTellWriter
{
    private readonly Unit _unit;
    private readonly ScoutQuestion _question;
    private readonly PlayLog _plays;
    private readonly IReadOnlyList<string> _games;
    private readonly SelfScoutOptions _options;
    private readonly CategoryColumn _outcome;
    private readonly CategoryColumn _game;
    private readonly CategoryColumn _success;
    private readonly Tally _usualSuccess;

    public SelfTellWriter(Unit unit, ScoutQuestion question, PlayLog plays, IReadOnlyList<string> games, SelfScoutOptions options)
    {
        (_unit, _question, _plays, _games, _options) = (unit, question, plays, games, options);
        _outcome = plays.Dimension(question.Outcome);
        _game = plays.Category(ColumnNames.Game);
        _success = plays.Category(ColumnNames.Success);
        _usualSuccess = Successes(Enumerable.Range(0, plays.Rows));
    }

    /// <param name="isHabit">Held against an even split, not against our usual rate.</param>
    public SelfTell Write(Tell tell, bool isHabit = false)
    {
        var other = MostOften(tell.Rows, tell.Outcome);
        var film = Film(tell, other);
        var money = tell.Rows.Count(IsMoney);
        return new SelfTell(
            0,
            _question,
            tell,
            (double)tell.Plays / _games.Count,
            (double)money / tell.Plays,
            TellHistory.Of(tell, _games, _options),
            other,
            Breaks(tell, isHabit),
            film,
            Counters.Of(_question.Outcome, tell.Outcome, other),
            IsWorthKeeping(film) ? Advice.Keep : Advice.Break)
        { IsHabit = isHabit, Plays = _plays.Take([.. tell.Rows]) };
    }

    private BreakCount Breaks(Tell tell, bool isHabit)
    {
        var inLook = tell.Rows.ToHashSet();
        var byGame = Enumerable.Range(0, _plays.Rows).Where(row => _outcome.Codes[row] > 0).ToLookup(row => _game[row]);
        var games = _games.Select(game => new GameCount(Of(byGame[game].Where(inLook.Contains)), Of(byGame[game].Where(row => !inLook.Contains(row))))).ToArray();
        return BreakCount.Of(
            games,
            Math.Min(_games.Count, _options.GamesSeen - 1),
            new BreakLine(_options.Level, _options.Fdr, _question.LeastShare, _options.MinPlays, isHabit));

        Tally Of(IEnumerable<int> rows)
        {
            var all = rows.ToArray();
            return new Tally(all.Count(row => _outcome[row] == tell.Outcome), all.Length);
        }
    }

    private CallFilm Film(Tell tell, string other)
    {
        var usual = Successes(tell.Rows.Where(row => _outcome[row] == tell.Outcome));
        var here = Successes(tell.Rows.Where(row => _outcome[row] == other));
        var fromLook = here.Plays >= CallFilm.FewestPlays;
        return new CallFilm(
            usual, fromLook ? here : Successes(Enumerable.Range(0, _plays.Rows).Where(row => _outcome[row] == other)), fromLook, _options.Level);
    }

    /// <summary>A look that clearly wins more than we usually do need not be broken because it can be read.</summary>
    private bool IsWorthKeeping(CallFilm film) =>
        film.Verdict == MixVerdict.Loses
        || (film.Usual.Plays >= _options.MinPlays && OneProportion.Wilson(film.Usual.Count, film.Usual.Plays, _options.Level).Low > _usualSuccess.Share);

    private string MostOften(IReadOnlyList<int> rows, string value)
    {
        string Top(IEnumerable<int> among) => among.Where(row => _outcome.Codes[row] > 0 && _outcome[row] != value)
            .GroupBy(row => _outcome.Codes[row]).OrderByDescending(g => g.Count()).ThenBy(g => g.Key)
            .Select(g => _outcome.Levels[g.Key]).FirstOrDefault("");
        return Top(rows) is { Length: > 0 } here ? here : Top(Enumerable.Range(0, _plays.Rows));
    }

    // What the offense gains the defense loses.
    private Tally Successes(IEnumerable<int> rows)
    {
        var judged = rows.Where(row => _success.Codes[row] > 0).ToArray();
        var good = _unit == Unit.Offense ? "yes" : "no";
        return new Tally(judged.Count(row => _success[row] == good), judged.Length);
    }

    private bool IsMoney(int row) =>
        _plays.Category(ColumnNames.Down)[row] is "3" or "4" || _plays.Category(ColumnNames.FieldZone)[row] is "red zone" or "tight red" or "goal line";
}
