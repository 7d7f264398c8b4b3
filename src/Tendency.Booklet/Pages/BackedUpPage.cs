using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What do they call near their own goal line?</summary>
internal static class BackedUpPage
{
    private const int MostSnaps = 14;

    public static Page? Compose(Study study)
    {
        var plays = study.Plays;
        var backed = plays.Where(ColumnNames.FieldZone, "backed up");
        var coming = plays.Where(ColumnNames.FieldZone, "coming out");
        var both = plays.Where(ColumnNames.FieldZone, "backed up", "coming out");
        if (both.Rows == 0)
        {
            return null;
        }

        var limits = study.Week.Boundaries;
        Situation[] rows =
        [
            Situation.Total(plays),
            new("Backed up", $"own 1 to {99 - limits.ComingOutMost}", backed) { Spoken = "backed up" },
            new("Coming out", $"own {100 - limits.ComingOutMost} to {99 - limits.OpenFieldMost}", coming) { Spoken = "coming out" },
            Situation.Group("Both, by down", both),
            new("1st down", "", both.Where(ColumnNames.Down, "1")) { Spoken = $"on first down inside their own {99 - limits.OpenFieldMost}" },
            new("2nd down", "", both.Where(ColumnNames.Down, "2")) { Spoken = $"on second down inside their own {99 - limits.OpenFieldMost}" },
            new("3rd down", "", both.Where(ColumnNames.Down, "3")) { Spoken = $"on third down inside their own {99 - limits.OpenFieldMost}" },
        ];
        var list = backed.Rows > 0 ? backed : coming;
        return new Page("backed-up", "Backed up", CallFinding.Of(study, rows, CallFinding.None(study, both, $"inside their own {99 - limits.OpenFieldMost}")))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                CallTable.Of(study, "Ball on", rows),
                new Heading(backed.Rows > 0 ? "Backed up, snap by snap" : "Coming out, snap by snap", Words.Figured(list.Rows, "play")),
                SnapTable.Of(study, list, MostSnaps),
            ],
        };
    }
}
