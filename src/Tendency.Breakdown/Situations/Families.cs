using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Formations and run schemes gathered into their families.</summary>
internal static class Families
{
    public static CategoryColumn[] Columns(PlayLog log, Glossary glossary) =>
    [
        Of(log, FormationFamily, Formation, glossary.FormationFamily),
        Of(log, RunFamily, RunScheme, glossary.RunFamily),
    ];

    // Looked up once a word, not once a row.
    private static CategoryColumn Of(PlayLog log, string name, string of, Func<string, string> family)
    {
        var words = log.Category(of);
        var byCode = words.Levels.Select(word => word.Length == 0 ? "" : family(word)).ToArray();
        var codes = words.Codes.ToArray();
        return CategoryColumn.FromWords(name, codes.Select(code => byCode[code]));
    }
}
