namespace Tendency.Booklet.Blocks;

/// <summary>A piece of a page. Printers lay blocks under one another; the width comes from the page, a panel or a column.</summary>
public abstract record Block;

/// <summary>Title of the blocks that follow, under a rule; the remark stands beside it in smaller type.</summary>
/// <param name="Title">A short noun phrase: "Scheme mix".</param>
/// <param name="Remark">What is counted and how to read it: "Share of 149 runs."</param>
public sealed record Heading(string Title, string Remark = "") : Block
{
    /// <summary>No rule above: for a heading that follows another block closely.</summary>
    public bool Bare { get; init; }
}

/// <summary>Size and leading of a paragraph, in points.</summary>
public enum TextStyle
{
    /// <summary>15/19: the recommendation.</summary>
    Lead,

    /// <summary>12/16: what to say on the field.</summary>
    Call,

    /// <summary>10/13.5.</summary>
    Prose,

    /// <summary>9.5/12.5: long evidence.</summary>
    Deck,

    /// <summary>8/10.5: notes under a table.</summary>
    Note,
}

/// <summary>Words that wrap to the width at hand.</summary>
public sealed record Paragraph(RichText Text, TextStyle Style = TextStyle.Prose) : Block
{
    public static Paragraph Note(RichText text) => new(text, TextStyle.Note);

    public static Paragraph Lead(RichText text) => new(text, TextStyle.Lead);

    public static Paragraph Call(RichText text) => new(text, TextStyle.Call);
}

/// <summary>A claim with the count that carries it, its strip on an axis shared by all claims of the list.</summary>
/// <param name="Claim">The plain sentence: "With the back set to the weak side, they run."</param>
/// <param name="Share">The count behind it.</param>
/// <param name="Unit">What was counted, plural: "plays", "runs, back offset".</param>
/// <param name="LineName">What the comparison line is: "team run rate".</param>
/// <param name="Support">One more sentence and where to read on.</param>
public sealed record Evidence(string Claim, Share Share, string Unit, string LineName, RichText Support)
{
    /// <summary>The plays behind the claim, expandable where the printer can.</summary>
    public PlayList? Plays { get; init; }
}

/// <summary>Numbered claims, at most about six.</summary>
public sealed record EvidenceList(string Title, IReadOnlyList<Evidence> Claims) : Block;

/// <summary>One large number with its count, range and a small scale.</summary>
public sealed record KeyFigure(string Label, Share Share)
{
    /// <summary>One line under the scale: the share with some games counted more, and the plays it is worth. Empty = none.</summary>
    public string Weighted { get; init; } = "";
}

/// <summary>Up to five key figures side by side.</summary>
public sealed record KeyFigures(IReadOnlyList<KeyFigure> Figures) : Block;

/// <summary>One bar of chances or shares of a whole: the winner black, the rest gray.</summary>
/// <param name="Label">What it stands for.</param>
/// <param name="Value">0–1.</param>
/// <param name="Winner">The choice we recommend.</param>
public sealed record Bar(string Label, double Value, bool Winner = false)
{
    /// <summary>The words at the bar's tip; by default the percent.</summary>
    public string Tip { get; init; } = Figures.Percent(Value);
}

/// <summary>Horizontal bars on one scale from 0 to <see cref="Full"/>.</summary>
public sealed record Bars(IReadOnlyList<Bar> Items) : Block
{
    /// <summary>The value a full-length bar stands for.</summary>
    public double Full { get; init; } = 1;

    /// <summary>Points kept for the labels.</summary>
    public double LabelWidth { get; init; } = 40;
}

/// <summary>A boxed sentence in place of a table or page that has nothing to show: what is missing, how much is filled, which column fills it.</summary>
public sealed record EmptyState(RichText Text) : Block;

/// <summary>One of several small pictures of the same make.</summary>
/// <param name="Title">Name, 10.5 bold.</param>
/// <param name="Remark">At the right of the title: "run 48%, 40 of 84".</param>
/// <param name="Body">Blocks in the panel's width (164 points for three columns).</param>
public sealed record Panel(string Title, string Remark, IReadOnlyList<Block> Body)
{
    /// <summary>A line under the title, bold when <see cref="Marked"/>: "steady, 21% by luck alone".</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>A heavy rule above: this one moved.</summary>
    public bool Marked { get; init; }
}

/// <summary>Panels in rows; every panel of a row is as tall as the tallest.</summary>
public sealed record SmallMultiples(IReadOnlyList<Panel> Panels, int Columns = 3) : Block;

/// <summary>A column of a <see cref="SideBySide"/>: its width in points (0 = an equal share of what is left).</summary>
public sealed record Side(double Width, IReadOnlyList<Block> Blocks);

/// <summary>Columns of blocks beside one another, 12 points (or <see cref="Gutter"/>) apart; kept on one page.</summary>
public sealed record SideBySide(IReadOnlyList<Side> Sides) : Block
{
    public double Gutter { get; init; } = 12;
}

/// <summary>Blocks that must not be parted by a page's end.</summary>
public sealed record Together(IReadOnlyList<Block> Blocks) : Block;

/// <summary>Empty height in points, for the rare place where the standard gap is wrong.</summary>
public sealed record Space(double Points) : Block;
