using Tendency.Booklet.Pages;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Tests.Pages.Sheets;

/// <summary>Studies with what the sheets add to the plays: fronts and tells.</summary>
internal static class SheetStudies
{
    public static readonly FrontOptions Options = new() { Draws = 2_000, CardDraws = 1_000 };

    private static readonly string[] s_fronts = ["tight", "five to back", "edge to back", "over", "double five"];

    public static Study FiveGames { get; } = Of(Studies.FiveGames);

    public static Study Of(Study study)
    {
        var (fronts, _) = FrontBook.BuiltIn.Plan(s_fronts);
        return study with
        {
            Fronts = FrontCheck.Of(study.Plays, FrontBook.BuiltIn, fronts, Options),
            Tells = [Tells.Search(study.Plays, ColumnNames.Call, TellOptions.Default)],
        };
    }
}
