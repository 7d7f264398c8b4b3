namespace Tendency.Booklet.Blocks;

/// <summary>A stretch of text of one weight. With an anchor it is a link, and the printer writes that page's number after it ("Page " becomes "Page 7").</summary>
public readonly record struct TextRun(string Text, bool Bold = false, string? Anchor = null);

/// <summary>Text in one or two weights: <c>RichText.Strong("Start in Tight.") + " It is the best of five."</c></summary>
public sealed record RichText(IReadOnlyList<TextRun> Runs)
{
    public static readonly RichText Empty = new([]);

    public static RichText Plain(string text) => new([new TextRun(text)]);

    public static RichText Strong(string text) => new([new TextRun(text, Bold: true)]);

    /// <summary>"Page 7", linked; the number is known only when all pages are placed.</summary>
    public static RichText PageOf(string anchor, string word = "Page ") => new([new TextRun(word, Anchor: anchor)]);

    public static implicit operator RichText(string text) => Plain(text);

    public static RichText operator +(RichText left, RichText right) => new([.. left.Runs, .. right.Runs]);

    public bool IsEmpty => Runs.All(run => run.Text.Length == 0 && run.Anchor is null);

    /// <summary>The words alone, as golden tests and titles read them; a page link reads "Page [anchor]".</summary>
    public override string ToString() => string.Concat(Runs.Select(run => run.Anchor is null ? run.Text : $"{run.Text}[{run.Anchor}]"));
}
