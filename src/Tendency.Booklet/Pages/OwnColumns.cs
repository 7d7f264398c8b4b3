using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>Questions of yes or no that pages ask and no column of the chart holds. Blank where the chart does not say.</summary>
internal static class OwnColumns
{
    /// <summary>Whether five or more rushed: the question a defense's plays are first divided by.</summary>
    public const string ExtraRush = "five_or_more_rush";

    /// <summary>Of a pass: whether the passer was sacked.</summary>
    public const string Sacked = "sacked";

    /// <summary>Whether the play was a touchdown. The chart's column is yes or blank; a share needs the blanks as no, where there is such a column.</summary>
    public const string Scored = "scored";

    private const int FewestExtra = 5;

    /// <summary>The same plays with all of them.</summary>
    public static PlayLog AddTo(PlayLog plays)
    {
        var rushers = plays.Number(ColumnNames.Rushers);
        var calls = plays.Category(ColumnNames.Call);
        var results = plays.Category(ColumnNames.Result);
        var touchdowns = plays.Category(ColumnNames.Touchdown);
        var scores = plays.Has(ColumnNames.Touchdown);
        return plays.With(
            Answered(ExtraRush, row => rushers[row] switch { null => "", >= FewestExtra => "yes", _ => "no" }),
            Answered(Sacked, row => calls[row] != "pass" ? "" : results[row] switch { "" or "penalty" => "", "sack" => "yes", _ => "no" }),
            Answered(Scored, row => !scores ? "" : touchdowns[row] == "yes" ? "yes" : "no"));

        CategoryColumn Answered(string name, Func<int, string> answer) => CategoryColumn.FromWords(name, Enumerable.Range(0, plays.Rows).Select(answer));
    }
}
