using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>What does this defense call in a situation, and against a look?</summary>
internal static class DefenseSituations
{
    private const int MostLooks = 14;

    public static Page? DownDistance(Study study)
    {
        var rows = DownDistances.Of(study).Select(row => row with { Spoken = row.Spoken.Length == 0 ? "" : $"on {row.Spoken}" }).ToArray();
        return PageOf(study, "down-distance", "Down and distance", "Situation", rows);
    }

    public static Page? Formation(Study study) =>
        PageOf(study, "formation", "Against formations", "Formation", [.. By(study, ColumnNames.Formation, Words.Title, value => $"against {Words.Plain(value)}")]);

    public static Page? Personnel(Study study) =>
        PageOf(study, "personnel", "Against personnel", "Personnel", [.. By(study, ColumnNames.Personnel, value => $"{value} personnel", value => $"against {value} personnel")]);

    /// <summary>Their most frequent looks, those on five plays or more.</summary>
    internal static IEnumerable<Situation> By(Study study, string column, Func<string, string> name, Func<string, string> spoken)
    {
        var plays = ExtraRush.Plays(study);
        return CrossTab.Values(plays, column).Where(value => value.Count >= Share.FewestPlays).Take(MostLooks)
            .Select(value => new Situation(name(value.Value), "", plays.Where(column, value.Value)) { Spoken = spoken(value.Value) })
            .Prepend(Situation.Total(plays));
    }

    private static Page PageOf(Study study, string anchor, string name, string head, Situation[] rows) => new(anchor, name, Finding(study, rows))
    {
        Deck = DefenseTable.Deck,
        Blocks = [DefenseTable.Of(study, head, rows), Paragraph.Note("Counts at the right of each name are plays. Rows under 5 plays show the count only.")],
    };

    private static string Finding(Study study, Situation[] rows)
    {
        var said = rows.Where(row => row.Spoken.Length > 0).Select(row => (row.Spoken, Share: ExtraRush.Of(study, row.Plays), Moves: study.Moves(row.Plays, OwnColumns.ExtraRush, "yes", ExtraRush.Usual(study))))
            .Where(row => row.Share.Plays >= CallVerdict.FewestPlays).OrderByDescending(row => row.Moves).ToArray();
        var more = said.Where(row => row.Share.Lean() == Lean.Above).Select(row => row.Spoken).ToArray();
        var less = said.Where(row => row.Share.Lean() == Lean.Below).Select(row => row.Spoken).ToArray();
        return more.Length + less.Length == 0
            ? "No row is sure to bring more or fewer rushers than usual."
            : Headline.First(
                Words.Sentences(Rush("more", more), Rush("less", less)),
                Words.Sentences(Rush("more", [.. more.Take(2)]), Rush("less", [.. less.Take(2)])),
                more.Length > 0 ? Rush("more", [more[0]]) : Rush("less", [less[0]]));
    }

    private static string Rush(string how, string[] spoken) => spoken.Length == 0 ? "" : $"They bring extra rushers {how} often {Words.Join(spoken)}.";
}
