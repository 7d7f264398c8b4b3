using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Situations;

/// <summary>What a snap counts as: run, pass, an undecided run-pass option, or no play.</summary>
internal static class Calls
{
    /// <summary>Keeps the charted call as <c>called</c> and puts the counted one in <c>call</c>.</summary>
    public static PlayLog Resolve(PlayLog log, RpoCounting counting)
    {
        var called = log.Category(ColumnNames.Call);
        var results = log.Category(ColumnNames.Result);
        var resolved = new CategoryBuilder(ColumnNames.Call, ["run", "pass", "rpo", "none"]);
        for (var row = 0; row < log.Rows; row++)
        {
            _ = resolved.Add(called[row] == "rpo" ? Option(counting, results[row]) : called[row]);
        }

        return log.With(resolved.Build(), CategoryColumn.Create(ColumnNames.Called, called.Levels, called.Codes));
    }

    // A scramble or a sack was a pass call (common practice), whatever official statistics book it as.
    private static string Option(RpoCounting counting, string result) => counting switch
    {
        RpoCounting.AsRun => "run",
        RpoCounting.AsPass => "pass",
        RpoCounting.OwnClass => "rpo",
        _ => result switch
        {
            "rush" => "run",
            "complete" or "incomplete" or "interception" or "sack" or "scramble" => "pass",
            _ => "rpo",
        },
    };
}
