using System.Globalization;
using System.Net;
using System.Text;

namespace Tendency.Booklet.Html;

/// <summary>Builds HTML text: everything that comes from a chart is escaped here and nowhere else.</summary>
internal sealed class Markup
{
    private readonly StringBuilder text = new();

    public static string Escape(string words) => WebUtility.HtmlEncode(words);

    /// <summary>A coordinate with at most two decimals.</summary>
    public static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Markup of our own, as it is.</summary>
    public Markup Raw(string markup)
    {
        text.Append(markup);
        return this;
    }

    public Markup Words(string words)
    {
        text.Append(Escape(words));
        return this;
    }

    /// <summary>An element around words.</summary>
    public Markup Element(string tag, string words, string attributes = "") =>
        words.Length == 0 ? this : Open(tag, attributes).Words(words).Close(tag);

    public Markup Open(string tag, string attributes = "")
    {
        text.Append('<').Append(tag).Append(attributes.Length == 0 ? "" : " ").Append(attributes).Append('>');
        return this;
    }

    public Markup Close(string tag)
    {
        text.Append("</").Append(tag).Append('>');
        return this;
    }

    public Markup Line()
    {
        text.Append('\n');
        return this;
    }

    public override string ToString() => text.ToString();
}
