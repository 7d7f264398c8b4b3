using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Whether a play gained enough, and whether it gained a lot.</summary>
internal static class Outcomes
{
    public static CategoryColumn[] Columns(PlayLog log, Boundaries boundaries)
    {
        var downs = log.Category(Down);
        var distances = log.Number(Distance);
        var gains = log.Number(Gain);
        var results = log.Category(Result);
        var touchdowns = log.Category(Touchdown);
        var effects = log.Category(PenaltyEffect);
        var calls = log.Category(Call);

        // A foul that replays the down leaves no result; one declined or added on leaves the play its own gain.
        bool HasResult(int row) => gains[row] is not null && results[row] != "penalty" && effects[row] is not ("replay" or "offset");
        bool Turnover(int row) => results[row] is "interception" or "fumble";

        string Enough(int row) =>
            !HasResult(row) || downs[row] is "" or "try" || distances[row] is null ? ""
            : results[row] == "interception" ? "no"
            : touchdowns[row] == "yes" ? "yes"
            : !Turnover(row) && gains[row] * 100 >= Percent(downs[row], boundaries) * distances[row] ? "yes" : "no";

        string Long(int row) => !HasResult(row) ? "" : calls[row] switch
        {
            "run" => gains[row] >= boundaries.ExplosiveRun ? "yes" : "no",
            "pass" => results[row] != "interception" && gains[row] >= boundaries.ExplosivePass ? "yes" : "no",
            _ => "",
        };

        return
        [
            DimensionColumn.Create(Success, log.Rows, ["yes", "no"], Enough),
            DimensionColumn.Create(Explosive, log.Rows, ["yes", "no"], Long),
        ];
    }

    private static int Percent(string down, Boundaries boundaries) => down switch
    {
        "1" => boundaries.SuccessFirst,
        "2" => boundaries.SuccessSecond,
        _ => boundaries.SuccessLate,
    };
}
