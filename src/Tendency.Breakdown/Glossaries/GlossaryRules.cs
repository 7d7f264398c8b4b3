using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Glossaries;

/// <summary>The rules that a staff's own glossary file can break.</summary>
internal static class GlossaryRules
{
    public static readonly Rule UnreadableGlossary = new("T301", Severity.Error, "the glossary can not be read",
        "Save it as CSV with the columns canonical, kind, aliases, family.", "The first filled row must name canonical and kind.");

    public static readonly Rule UnknownKind = new("T302", Severity.Error, "a word has an unknown kind",
        "Use a kind the glossary knows, such as formation, run_scheme, pass_concept, front, coverage.", "The kind is compared with those of the built-in glossary.");

    public static readonly Rule WordWithoutName = new("T303", Severity.Error, "a row of the glossary names no word",
        "Fill the cell canonical, or delete the row.", "The cell canonical is blank.");

    public static readonly Rule WordTwice = new("T304", Severity.Warning, "a word stands for two things",
        "Give the word to one of them.", "Within one kind a spelling may belong to one term; the first row that claims it has it.");

    public static readonly Rule UnknownFamily = new("T305", Severity.Warning, "a run scheme has an unknown family",
        "Use zone, gap, perimeter, option, quarterback run or other.", "The family of a run scheme is one of the six the tables print.");

    /// <summary>All of them, in the order of their codes.</summary>
    public static IReadOnlyList<Rule> All { get; } = [UnreadableGlossary, UnknownKind, WordWithoutName, WordTwice, UnknownFamily];
}
