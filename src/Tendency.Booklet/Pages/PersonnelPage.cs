using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>Who is on the field, and does it say what comes?</summary>
internal static class PersonnelPage
{
    private const int MostGroups = 7;
    private const int MostPairs = 6;

    public static Page? Compose(Study study)
    {
        var groups = CrossTab.Values(study.Plays, ColumnNames.Personnel);
        var charted = study.Plays.Where(row => study.Plays.Category(ColumnNames.Personnel)[row].Length > 0);
        var rows = groups.Take(MostGroups)
            .Select(group => new Situation($"{group.Value} personnel", Meaning(group.Value), charted.Where(ColumnNames.Personnel, group.Value)) { Spoken = $"from {group.Value} personnel" })
            .Prepend(Situation.Total(charted, "All charted"))
            .Concat(Pairs(charted))
            .ToArray();
        var others = groups.Skip(MostGroups).ToArray();
        return new Page("personnel", "Personnel", Finding(study, rows, groups))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                CallTable.Of(study, "Personnel", rows),
                Paragraph.Note(Words.Sentences(
                    "First digit backs, second digit tight ends (TE); the rest of five are receivers.",
                    others.Length == 0 ? "" : $"Others: {Words.Join(others.Select(group => group.Value))}, {Words.Figured(others.Sum(group => group.Count), "play")}.",
                    charted.Rows == study.Plays.Rows ? "" : $"Not charted on {Words.Figured(study.Plays.Rows - charted.Rows, "play")}: left out here.")),
            ],
        };
    }

    private static string Finding(Study study, Situation[] rows, IReadOnlyList<(string Value, int Count)> groups)
    {
        var total = groups.Sum(group => group.Count);
        var main = $"{Figures.Percent(new Share(groups[0].Count, total))} of their plays are {groups[0].Value} personnel";
        if (total < Share.FewestPlays)
        {
            return "Too few plays with personnel charted to read a lean.";
        }

        return groups.Count == 1
            ? $"They played {groups[0].Value} personnel on every charted snap."
            : CallFinding.Of(study, rows, $"{main}; no group gives run or pass away.");
    }

    private static IEnumerable<Situation> Pairs(PlayLog charted)
    {
        if (!charted.IsCharted(ColumnNames.Formation))
        {
            yield break;
        }

        var formations = charted.Category(ColumnNames.Formation);
        var personnel = charted.Category(ColumnNames.Personnel);
        var pairs = Enumerable.Range(0, charted.Rows).Where(row => formations[row].Length > 0)
            .GroupBy(row => (Personnel: personnel[row], Formation: formations[row]))
            .Select(group => (group.Key, Count: group.Count()))
            .Where(pair => pair.Count >= Share.FewestPlays)
            .OrderByDescending(pair => pair.Count).Take(MostPairs).ToArray();
        if (pairs.Select(pair => pair.Key.Personnel).Distinct().Count() < 2)
        {
            yield break;
        }

        yield return Situation.Group("With the formation", charted, "most frequent pairs");
        foreach (var ((group, formation), _) in pairs)
        {
            yield return new Situation($"{group} {Words.Plain(formation)}", "", charted.Where(ColumnNames.Personnel, group).Where(ColumnNames.Formation, formation));
        }
    }

    private static string Meaning(string personnel) => personnel is [var backs and >= '0' and <= '9', var ends and >= '0' and <= '9']
        ? $"{(backs == '1' ? "1 back" : $"{backs} backs")}, {ends} TE"
        : "";
}
