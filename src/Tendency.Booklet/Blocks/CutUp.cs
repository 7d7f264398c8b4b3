namespace Tendency.Booklet.Blocks;

/// <summary>Plays to cut together for the film room: those behind one claim, tell or table row.</summary>
/// <param name="Page">Anchor of the page that shows the number.</param>
/// <param name="Topic">The heading it stands under.</param>
/// <param name="Name">The row, cue or claim.</param>
/// <param name="Plays">Newest game first, in film order within a game.</param>
public sealed record CutUp(string Page, string Topic, string Name, IReadOnlyList<PlayRef> Plays)
{
    /// <summary>Every play list of a booklet, in reading order; one for the same plays under the same name.</summary>
    public static IReadOnlyList<CutUp> Of(ScoutingBooklet booklet)
    {
        ArgumentNullException.ThrowIfNull(booklet);
        return [.. booklet.Pages.SelectMany(page => Lists(page.Blocks, page.Name).Select(list => new CutUp(page.Anchor, list.Topic, list.Name, NewestFirst(list.Plays?.Plays ?? []))))
            .Where(cut => cut.Plays.Count > 0)
            .DistinctBy(cut => (cut.Page, cut.Topic, cut.Name))];
    }

    private static IEnumerable<(string Topic, string Name, PlayList? Plays)> Lists(IEnumerable<Block> blocks, string topic)
    {
        foreach (var block in blocks)
        {
            topic = block is Heading heading ? heading.Title : topic;
            foreach (var list in Lists(block, topic))
            {
                yield return list;
            }
        }
    }

    private static IEnumerable<(string Topic, string Name, PlayList? Plays)> Lists(Block block, string topic) => block switch
    {
        EvidenceList list => list.Claims.Select(claim => (list.Title, claim.Claim, claim.Plays)),
        Table table => table.Rows.Select(row => (topic, NameOf(row), PlaysOf(row))),
        PlayListing listing => [(topic, listing.Title, listing.List)],
        SmallMultiples multiples => multiples.Panels.SelectMany(panel => Lists(panel.Body, $"{topic}: {panel.Title}")),
        SideBySide beside => beside.Sides.SelectMany(side => Lists(side.Blocks, topic)),
        Together together => Lists(together.Blocks, topic),
        _ => [],
    };

    private static PlayList? PlaysOf(TableRow row) => row.Plays ?? row.Cells.OfType<TextCell>().FirstOrDefault(cell => cell.Plays is not null)?.Plays;

    /// <summary>The cue with what comes, else the row's first words.</summary>
    private static string NameOf(TableRow row)
    {
        var words = row.Cells.OfType<TextCell>().ToArray();
        var cell = words.FirstOrDefault(cell => cell.Plays is not null) ?? words.FirstOrDefault();
        return cell is null ? "" : string.Join(", ", cell.Lines.Select(line => line.ToString()).Where(line => line.Length > 0));
    }

    private static PlayRef[] NewestFirst(IReadOnlyList<PlayRef> plays) =>
        [.. plays.Select(play => play.Game).Distinct().Reverse().SelectMany(game => plays.Where(play => play.Game == game))];
}
