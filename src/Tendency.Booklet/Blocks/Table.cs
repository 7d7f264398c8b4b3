namespace Tendency.Booklet.Blocks;

public enum Align
{
    Left,
    Right,
    Center,
}

/// <summary>The scale of a strip column and the one line through all its rows.</summary>
/// <param name="Low">Left end (0 for shares).</param>
/// <param name="High">Right end (1 for shares).</param>
/// <param name="Ticks">Values labelled at the head.</param>
/// <param name="Percent">Labels print as percents, "%" on the last only; else as signed numbers.</param>
public sealed record StripAxis(double Low, double High, IReadOnlyList<double> Ticks, bool Percent = true)
{
    /// <summary>Comparison line through every row; null = none, or rows with their own.</summary>
    public double? Line { get; init; }

    /// <summary>Its name, printed once: "team 52%". Empty = unnamed.</summary>
    public string LineName { get; init; } = "";

    /// <summary>What a number off a percent scale counts: "yd", printed on the last label.</summary>
    public string Unit { get; init; } = "";

    /// <summary>0 to 100% with a line through all rows.</summary>
    public static StripAxis Shares(string lineName = "", double? line = null) => new(0, 1, [0, .5, 1]) { Line = line, LineName = lineName };

    /// <summary>0 to 100% where each row has its own baseline tick.</summary>
    public static StripAxis OwnBaselines() => new(0, 1, [0, .5, 1]);

    /// <summary>0 up to a share below 1, for mixes of many kinds: ticks every 10 or 20 points.</summary>
    public static StripAxis UpTo(double high)
    {
        var step = high > .5 ? .2 : .1;
        var count = (int)Math.Ceiling((high / step) - 1e-9);
        return new StripAxis(0, count * step, [.. Enumerable.Range(0, count + 1).Select(i => i * step)]);
    }
}

/// <summary>A table column. Stops are points from the table's left edge.</summary>
/// <param name="Head">Column head, at most two lines.</param>
/// <param name="Stop">Left edge of the cells.</param>
/// <param name="Width">Width of the cells; text wraps or is cut to it.</param>
/// <param name="Align">Of head and text; numbers align right.</param>
public sealed record Column(string Head, double Stop, double Width, Align Align = Align.Left)
{
    /// <summary>Regular-weight words after the head: "line: team 52%".</summary>
    public string Remark { get; init; } = "";

    /// <summary>Set for strip columns: draws the scale under the head and the grid through the rows.</summary>
    public StripAxis? Axis { get; init; }
}

/// <summary>Kinds of rows: plain, or the totals row that comes first and is closed by a heavier rule.</summary>
public enum RowKind
{
    Plain,
    Total,
}

/// <summary>One row: a cell for each column (missing ones at the end are blank), or a group head without cells.</summary>
public sealed record TableRow(IReadOnlyList<Cell> Cells)
{
    public TableRow(params Cell[] cells)
        : this((IReadOnlyList<Cell>)cells)
    {
    }

    public RowKind Kind { get; init; } = RowKind.Plain;

    /// <summary>A heavier rule above, at a change of group.</summary>
    public bool RuleAbove { get; init; }

    /// <summary>Name of a group head row; empty for a row of cells.</summary>
    public string Group { get; init; } = "";

    /// <summary>Words after the group's name: "(also counted in the rows above)".</summary>
    public string GroupRemark { get; init; } = "";

    /// <summary>The plays this row counts, expandable where the printer can; print leaves it to the cut-up file.</summary>
    public PlayList? Plays { get; init; }

    public static TableRow Total(params Cell[] cells) => new(cells) { Kind = RowKind.Total };

    public static TableRow GroupHead(string name, string remark = "") => new() { Group = name, GroupRemark = remark };
}

/// <summary>Rows under column heads. A long table is split between rows onto the next page, its head repeated.</summary>
public sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<TableRow> Rows) : Block
{
    /// <summary>What the table shows, for readers who hear it; also golden tests. Empty = the heading above says it.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Least row height in points; 0 = by content (17 for single lines, 36 for three).</summary>
    public double RowHeight { get; init; }

    /// <summary>No horizontal rules between rows: for the small strips inside a panel.</summary>
    public bool Bare { get; init; }
}
