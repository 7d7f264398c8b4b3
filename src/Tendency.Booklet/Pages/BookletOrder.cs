using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages;

/// <summary>The one list of pages, in reading order. To add a page: its file in this folder, its line here.</summary>
public static class BookletOrder
{
    public static IReadOnlyList<PageEntry> Pages { get; } =
    [
        new("Situations", "down-distance", "Down and distance", [], DownDistancePage.Compose),
    ];
}
