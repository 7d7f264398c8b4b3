namespace Tendency.Booklet.Blocks;

/// <summary>A whole printed piece as content: what it is called, what it rests on, and its pages in order. Knows no page size and no printing library.</summary>
/// <param name="Opponent">Who is studied, the large word of the brief and the small one of every header: "Port Halden".</param>
/// <param name="Subject">Which side of the ball, in the header after the opponent: "offense".</param>
/// <param name="Title">The document's title (window title, bookmarks' root): "Port Halden offense, scouting booklet".</param>
/// <param name="Footprint">What the numbers rest on, at the foot of every page: "4 games, 286 plays, charted to Sun 15 Nov".</param>
/// <param name="Sections">Pages in reading order, grouped for contents and bookmarks; a section of one page shows as that page alone.</param>
/// <param name="Dated">The date written into the file. The same content and date give the same bytes.</param>
/// <example>
/// <code>
/// var share = new Share(44, 62, new Interval(.587, .808), Baseline: .52);
/// var page = new Page("back-side", "Back's side", "Back weak, they run: 71%.")
/// {
///     Deck = "Dot: share of plays that were runs. Bar: likely range. Line: team rate.",
///     Blocks =
///     [
///         new Heading("By where the back stands", "277 plays"),
///         new Table(
///             [
///                 new Column("Back", 0, 100),
///                 new Column("Plays", 104, 30, Align.Right),
///                 new Column("Run share", 150, 106) { Axis = StripAxis.Shares("team 52%", .52) },
///                 new Column("Runs, likely", 270, 110),
///             ],
///             [new TableRow(Cells.Name("Weak"), Cells.Count(62), Cells.Strip(share), Cells.Share(share))]),
///         Paragraph.Note("Back unseen on 9 plays: left out here."),
///     ],
/// };
/// var booklet = new ScoutingBooklet("Port Halden", "offense", "Port Halden offense", "4 games, 286 plays", [new Section("Backs", [page])], dated);
/// PdfPrinter.Print(booklet, PaperSize.Letter, stream);
/// </code>
/// </example>
public sealed record ScoutingBooklet(
    string Opponent,
    string Subject,
    string Title,
    string Footprint,
    IReadOnlyList<Section> Sections,
    DateTimeOffset Dated)
{
    /// <summary>Whose work it is, for the document's properties; empty = not said.</summary>
    public string Author { get; init; } = "";

    /// <summary>Middle of the footer: what "likely" means on every page.</summary>
    public string LikelyMeans { get; init; } = "“Likely” = 95% interval";

    /// <summary>Right of the brief's title: what this is, and which game it is for. Either may be empty.</summary>
    public string Kind { get; init; } = "Scouting brief";

    /// <summary>"Game Friday 20 Nov".</summary>
    public string Occasion { get; init; } = "";

    /// <summary>Whether a contents page with links follows the brief.</summary>
    public bool Contents { get; init; } = true;

    /// <summary>A PNG printed small at the right of the brief's title; null = none.</summary>
    public ReadOnlyMemory<byte>? Logo { get; init; }

    public IEnumerable<Page> Pages => Sections.SelectMany(section => section.Pages);
}

/// <summary>Pages that belong together in contents and bookmarks.</summary>
public sealed record Section(string Name, IReadOnlyList<Page> Pages);

/// <summary>How a page is dressed.</summary>
public enum PageKind
{
    /// <summary>Portrait: opponent and page name above, headline, deck, blocks.</summary>
    Inside,

    /// <summary>The first page: the opponent at 30 points takes the place of header and headline.</summary>
    Brief,

    /// <summary>Landscape, punched on top, 720 × 516: the headline is the one title line; the footprint stands at its right.</summary>
    Sheet,
}

/// <summary>One page of content. What does not fit flows onto a continuation page with the same name.</summary>
/// <param name="Anchor">Unique short name, for links: "down-distance". Letters, digits and hyphens.</param>
/// <param name="Name">Header, contents, bookmark: "Down and distance".</param>
/// <param name="Headline">The finding, one or two sentences, at most two lines.</param>
public sealed record Page(string Anchor, string Name, string Headline)
{
    /// <summary>One line telling how to read this page.</summary>
    public string Deck { get; init; } = "";

    public IReadOnlyList<Block> Blocks { get; init; } = [];

    public PageKind Kind { get; init; } = PageKind.Inside;
}
