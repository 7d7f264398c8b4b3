namespace Tendency.Booklet.Blocks;

/// <summary>Short ways to write the usual cells.</summary>
public static class Cells
{
    public static readonly Cell Blank = new TextCell([]);

    /// <summary>Row name, bold, with an optional remark under it in smaller type ("2nd medium" / "4 to 6").</summary>
    public static Cell Name(string name, string remark = "") =>
        new TextCell(remark.Length == 0 ? [RichText.Strong(name)] : [RichText.Strong(name), RichText.Plain(remark)]);

    /// <summary>Plain words, one to three lines.</summary>
    public static Cell Text(params RichText[] lines) => new TextCell(lines);

    /// <summary>A cue and what comes with it, its plays printed small as far as they fit.</summary>
    public static Cell Cue(RichText cue, RichText outcome, PlayList plays) => new TextCell([cue, outcome]) { Plays = plays };

    /// <summary>A bare count.</summary>
    public static Cell Count(int count) => new TextCell([RichText.Plain(Figures.Count(count))]) { Numeric = true };

    /// <summary>Any other printed number, set as figures: "4.4 ± 1.4".</summary>
    public static Cell Figure(RichText text) => new TextCell([text]) { Numeric = true };

    public static Cell Strip(Share share) => new StripCell(share);

    /// <summary>Percent, k of n, range on two lines.</summary>
    public static Cell Share(Share share) => new ShareCell(share);

    /// <summary>Percent and k of n on one line; with <paramref name="range"/> "percent low–high" in its place when the plays stand in another column.</summary>
    public static Cell ShareLine(Share share, bool range = false) => new ShareCell(share) { Form = range ? ShareForm.PercentAndRange : ShareForm.PercentAndCount };

    /// <summary>Names with counts at the right edge, at most three lines.</summary>
    public static Cell Counts(IEnumerable<NamedCount> counts) => new CountsCell([.. counts]);

    /// <summary>One stem a game against the base rate.</summary>
    public static Cell Spark(IEnumerable<Share> games, double? baseline) => new SparkCell([.. games], baseline);

    public static Cell Bar(double value, bool winner = false, double full = 1) => new BarCell(new Bar("", value, winner), full);
}
