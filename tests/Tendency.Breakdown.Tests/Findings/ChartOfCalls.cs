using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Findings;

/// <summary>Charts written as counts: so many plays of a look and a call in every game.</summary>
internal static class ChartOfCalls
{
    /// <param name="games">Number of games, all alike unless the count depends on the game (0, 1, ...).</param>
    /// <param name="looks">Back side, motion, runs and passes by game.</param>
    public static PlayLog Of(int games, params (string Back, string Motion, Func<int, int> Runs, Func<int, int> Passes)[] looks)
    {
        var (game, back, motion, call) = (new List<string>(), new List<string>(), new List<string>(), new List<string>());
        var play = new List<int?>();
        for (var g = 0; g < games; g++)
        {
            var number = 1;
            foreach (var look in looks)
            {
                var runs = look.Runs(g);
                for (var i = 0; i < runs + look.Passes(g); i++)
                {
                    game.Add($"G{g + 1}");
                    back.Add(look.Back);
                    motion.Add(look.Motion);
                    call.Add(i < runs ? "run" : "pass");
                    play.Add(number++);
                }
            }
        }

        var log = new PlayLog(
            play.Count,
            [
                CategoryColumn.FromWords("game", game), CategoryColumn.FromWords("back_side", back),
                CategoryColumn.FromWords("motion", motion), CategoryColumn.FromWords("call", call),
            ],
            [NumberColumn.Create("play", play)],
            []);
        return DerivedColumns.AddTo(log, WeekPlan.Default, Glossary.BuiltIn);
    }
}
