using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Pdf;

/// <summary>The short ones: bars, boxed sentences, play lists, pictures.</summary>
internal static class SmallSetters
{
    public static SetBlock Bars(Bars bars, double width, Letters letters)
    {
        const double Pitch = 16;
        var label = new Style(9.5);
        return new SetPicture(Pitch * bars.Items.Count, (ink, x, y) =>
        {
            var axis = x + bars.LabelWidth;
            for (var i = 0; i < bars.Items.Count; i++)
            {
                var bar = bars.Items[i];
                var style = label with { Bold = bar.Winner };
                ink.Text(x, y + (i * Pitch) + (Pitch / 2) + 3.5, letters.Cut(bar.Label, style, bars.LabelWidth - 6), style);
                ink.Shapes(axis, y + (i * Pitch), CellMarks.Of(bar, bars.Full, width - bars.LabelWidth, Pitch));
            }

            ink.Line(axis, y, axis, y + (Pitch * bars.Items.Count), 0.5);
        });
    }

    public static SetBlock Empty(EmptyState empty, double width, Letters letters)
    {
        const double Inside = 10;
        const double Leading = 13.5;
        var lines = letters.Wrap(empty.Text, 10, width - (2 * Inside));
        var height = (lines.Count * Leading) + 14;
        return new SetPicture(height, (ink, x, y) =>
        {
            ink.Box(x + 0.25, y, width - 0.5, height, Tone.None, 0.5);
            ink.Lines(x + Inside, y + 17, lines, Leading);
        });
    }

    public static SetBlock Listing(PlayListing listing, double width, Letters letters)
    {
        var text = RichText.Empty;
        string? game = null;
        foreach (var play in listing.List.Plays)
        {
            var lead = play.Game == game ? ", " : game is null ? "" : "; ";
            text += RichText.Plain(lead);
            if (play.Game != game)
            {
                text = text + RichText.Strong(listing.List.Short(play.Game)) + " ";
                game = play.Game;
            }

            text += Figures.Count(play.Play);
        }

        var lines = letters.Wrap(text.IsEmpty ? RichText.Plain("no plays") : text, 8, width);
        var title = letters.Wrap(listing.Title, new Style(9, Bold: true), width, 2);
        return new SetFlow(
        [
            new Placed(0, new SetPicture(title.Count * 12, (ink, x, y) => ink.Lines(x, y + 9, title, 12), keepsNext: true)),
            new Placed(0, new SetText(lines, 10.5)),
        ]);
    }

    public static SetBlock Picture(Diagram diagram, double width)
    {
        var left = diagram.Align switch
        {
            Align.Right => width - diagram.Width,
            Align.Center => (width - diagram.Width) / 2,
            _ => 0,
        };
        return new SetPicture(diagram.Height, (ink, x, y) => ink.Shapes(x + left, y, diagram.Shapes));
    }
}
