using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Situations;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>Reads our own calls as the next opponent's staff does.</summary>
public static class SelfScout
{
    /// <summary>Asks every question of the unit, each paying for its own search, and ranks what gives us away by what it costs.</summary>
    /// <param name="studied">Our own plays: the ball is ours (offense) or theirs (defense).</param>
    public static SelfScoutReport Run(StudiedPlays studied, SelfScoutOptions options)
    {
        var plays = ScoutColumns.AddTo(studied.Plays);
        var games = plays.Category(ColumnNames.Game).UsedLevels();
        var missing = new List<(string, string)>();
        var tells = new List<SelfTell>();
        var searched = 0;
        foreach (var question in ScoutQuestion.For(studied.Unit))
        {
            if (!plays.IsCharted(question.Outcome))
            {
                missing.Add((question.Name, question.Outcome));
                continue;
            }

            var asked = question.Within(plays);
            var report = Tells.Search(asked, question.Outcome, new TellOptions
            {
                Depth = question.Depth,
                Fdr = options.Fdr,
                MinPlays = options.MinPlays,
                LeastShare = question.LeastShare,
                IsGenerous = true,
                Level = options.Level,
                Dimensions = question.Dimensions,
            });
            searched += report.Searched;
            var writer = new SelfTellWriter(studied.Unit, question, asked, games, options);
            tells.AddRange(report.Tells.Select(tell => writer.Write(tell)));
            tells.AddRange(SideHabit.Of(asked, question, options).Select(habit => writer.Write(habit, isHabit: true)));
        }

        var ranked = tells.OrderByDescending(t => t.Cost).ThenBy(t => t.Tell.PValue).ThenBy(t => t.Tell.Situation, StringComparer.Ordinal);
        return new SelfScoutReport(studied.Unit, games, plays.Rows, [.. ranked.Select((t, i) => t with { Rank = i + 1 })], searched, missing);
    }
}
