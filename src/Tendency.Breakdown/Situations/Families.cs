using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Formations and run schemes gathered into their families.</summary>
internal static class Families
{
    public static CategoryColumn[] Columns(PlayLog log, Glossary glossary) =>
    [
        OfFormation(log, glossary),
        Of(log, RunFamily, RunScheme, glossary.RunFamily),
    ];

    // What a word can not tell may stand in the columns beside it; looked up once for each word and surface.
    private static CategoryColumn OfFormation(PlayLog log, Glossary glossary)
    {
        var words = log.Category(Formation);
        var attached = log.Category(Attached);
        var wing = log.Category(Wing);
        var personnel = log.Category(Personnel);
        var known = new Dictionary<(string, FormationSeen), string>();
        string FamilyIn(int row)
        {
            var people = personnel[row];
            var seen = new FormationSeen(attached[row], wing[row], people.Length == 2 ? people[1] - '0' : null);
            if (!known.TryGetValue((words[row], seen), out var family))
            {
                known[(words[row], seen)] = family = words[row].Length == 0 ? "" : glossary.FormationFamily(words[row], seen);
            }

            return family;
        }

        return CategoryColumn.FromWords(FormationFamily, Enumerable.Range(0, log.Rows).Select(FamilyIn));
    }

    // Looked up once a word, not once a row.
    private static CategoryColumn Of(PlayLog log, string name, string of, Func<string, string> family)
    {
        var words = log.Category(of);
        var byCode = words.Levels.Select(word => word.Length == 0 ? "" : family(word)).ToArray();
        var codes = words.Codes.ToArray();
        return CategoryColumn.FromWords(name, codes.Select(code => byCode[code]));
    }
}
