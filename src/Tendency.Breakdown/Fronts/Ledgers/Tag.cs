using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>What is added to a run: a read for the quarterback, a back away from the blocking, a throw off a defender.</summary>
public enum Tag
{
    None,
    Read,
    Bash,
    Rpo,
}

/// <summary>Tags as charted.</summary>
public static class Tags
{
    /// <summary>The tag of a charted read word, a throw by its own name (bubble, glance) included; none for a blank or a word that adds no runner.</summary>
    public static Tag Parse(string word)
    {
        var said = word.ToLowerInvariant();
        return said.Length == 0 || said == "none" ? Tag.None
            : said.Contains("bash", StringComparison.Ordinal) ? Tag.Bash
            : said.Contains("rpo", StringComparison.Ordinal) || Glossary.BuiltIn.Find("rpo_tag", said) is not null ? Tag.Rpo
            : said.Contains("read", StringComparison.Ordinal) || said.Contains("option", StringComparison.Ordinal) ? Tag.Read
            : Tag.None;
    }
}
