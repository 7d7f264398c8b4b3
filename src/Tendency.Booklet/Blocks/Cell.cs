namespace Tendency.Booklet.Blocks;

/// <summary>What stands in one table cell. Cells hold numbers and words; the printer makes marks of them.</summary>
public abstract record Cell;

/// <summary>One to three lines of words; the first is the name if bold.</summary>
public sealed record TextCell(IReadOnlyList<RichText> Lines) : Cell
{
    /// <summary>Printed small under the lines, whole items then "+12 more".</summary>
    public PlayList? Plays { get; init; }

    /// <summary>Printed lines each of <see cref="Lines"/> may take; beyond them it is cut with ….</summary>
    public int MostLines { get; init; } = 2;

    /// <summary>The text is a number.</summary>
    public bool Numeric { get; init; }
}

/// <summary>How a share is written out in a cell.</summary>
public enum ShareForm
{
    /// <summary>Percent, then "k of n" over "low–high%".</summary>
    Stacked,

    /// <summary>Percent and "k of n; low–high%" on one line.</summary>
    OneLine,

    /// <summary>Percent and "k of n".</summary>
    PercentAndCount,

    /// <summary>Percent and "low–high%": where the count has its own column.</summary>
    PercentAndRange,

    /// <summary>Percent at the right edge, "k of n; low–high%" under it.</summary>
    RightStacked,

    /// <summary>Percent, "k of n", "low–high%", "base 37%" on three lines.</summary>
    WithBase,
}

/// <summary>A share in figures. Bold when it differs from its baseline; under five plays the count alone and "too few".</summary>
public sealed record ShareCell(Share Share) : Cell
{
    public ShareForm Form { get; init; } = ShareForm.Stacked;
}

/// <summary>A share as dot and whisker on the column's axis. Solid and heavy when it differs from its baseline, open when it does not, an upright tick without one; hatched under five plays.</summary>
public sealed record StripCell(Share Share) : Cell;

/// <summary>Any estimate with its range on a signed axis (yards against average), tested against the axis line.</summary>
public sealed record EstimateCell(double Value, double Low, double High, double? Baseline) : Cell
{
    public bool Differs => Baseline is { } line && (line < Low || line > High);
}

/// <summary>A name and how often.</summary>
public readonly record struct NamedCount(string Name, int Count);

public sealed record CountsCell(IReadOnlyList<NamedCount> Counts) : Cell;

/// <summary>Stems by game, in order; a game without plays shows a dash.</summary>
public sealed record SparkCell(IReadOnlyList<Share> Games, double? Baseline) : Cell;

/// <summary>A bar from the cell's left edge.</summary>
/// <param name="Bar">Its label is not printed: the row names it.</param>
/// <param name="Full">The value a full-length bar stands for.</param>
public sealed record BarCell(Bar Bar, double Full = 1) : Cell;

/// <summary>How dear a front is in one cell: the frame's darkness.</summary>
public enum HeatStep
{
    None,
    Light,
    Middle,
    Dark,
}

/// <summary>A signed number in a framed cell: plus costs us, minus saves; bold = its range leaves out zero.</summary>
/// <param name="Text">The signed number as printed: "+0.3".</param>
/// <param name="Under">Small, under it: "± 0.8" or "n = 4".</param>
/// <param name="Step">The frame, by how much it costs.</param>
/// <param name="Bold">Its range leaves out zero.</param>
public sealed record HeatCell(string Text, string Under, HeatStep Step, bool Bold = false) : Cell;

/// <summary>What a call cell says at a glance.</summary>
public enum CallTone
{
    /// <summary>Leans, its range does not settle it.</summary>
    Plain,

    /// <summary>Could be even: light gray.</summary>
    Even,

    /// <summary>Sure run: white on black.</summary>
    SureRun,

    /// <summary>Sure pass: boxed.</summary>
    SurePass,

    /// <summary>Under five plays, or none: hatched.</summary>
    TooFew,
}

/// <summary>A cell of the sideline sheet: "run 64" over "76/118, 55–72".</summary>
public sealed record CallCell(string Call, string Under, CallTone Tone) : Cell;
