using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages;

/// <summary>A page of the booklet: where it stands, what it needs, how it is made.</summary>
/// <param name="Section">Group in contents and bookmarks.</param>
/// <param name="Anchor">Unique short name, for links and <c>--pages</c>.</param>
/// <param name="Name">What it is called in header and contents.</param>
/// <param name="Needs">Columns without which there is no page; the last page names those missing.</param>
/// <param name="Compose">The page, or null when the plays hold nothing for it.</param>
public sealed record PageEntry(string Section, string Anchor, string Name, IReadOnlyList<string> Needs, Func<Study, Page?> Compose)
{
    /// <summary>Why there is no page although its columns are charted: "no third down".</summary>
    public string WhenEmpty { get; init; } = "no such plays";

    /// <summary>The same, where it depends on the charts; null = <see cref="WhenEmpty"/> always.</summary>
    public Func<Study, string>? WhyEmpty { get; init; }

    /// <summary>Whether it is wanted at all: one that is not is no page left out.</summary>
    public Func<Study, bool> IsWanted { get; init; } = _ => true;

    /// <summary>Speaks of the other pages, so it is composed after them.</summary>
    public bool SumsUp { get; init; }
}

/// <summary>What became of an entry: its page, or the columns it lacks, or that no play fits it.</summary>
public sealed record PlacedPage(PageEntry Entry, Page? Page, IReadOnlyList<string> Missing);
