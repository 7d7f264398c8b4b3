using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Rules about the words of the charts.</summary>
internal static class WordRules
{
    public static readonly Rule Misspelt = new("W101", Severity.Warning, "a word looks misspelt", "Correct the word, or add it to the glossary.", "An unknown word of three rows at most, one slip (two from eight letters on) away from a known word or one charted ten times as often; codes under four letters and words that differ in a digit are never slips of each other.");
    public static readonly Rule Unknown = new("W102", Severity.Note, "a word is in no glossary", "Nothing if it is your own word; add it to the glossary to give it a family.", "A word of a column that has a glossary which neither the built-in nor the staff's glossary knows; it counts under its own name.");
    public static readonly Rule AmbiguousWord = new("W103", Severity.Note, "a word has more than one meaning", "Write counter gt or counter gh.", "The plain word counter, which is counted as counter gt.");

    public static IReadOnlyList<CheckedRule> All { get; } = [new(Misspelt), new(Unknown), new(AmbiguousWord, RunScheme)];
}
