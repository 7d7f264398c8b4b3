namespace Tendency.Booklet.Blocks;

/// <summary>The tones of print; nothing in between. Small type never stands on one darker than Light.</summary>
public enum Tone
{
    None,
    White,

    /// <summary>#EFEFEF.</summary>
    Light,

    /// <summary>#DADADA.</summary>
    Middle,

    /// <summary>#BABABA.</summary>
    Dark,

    /// <summary>#B0B0B0: the middle heat frame.</summary>
    Frame,

    /// <summary>#6E6E6E: the dark heat frame.</summary>
    DarkFrame,
    Black,
}

public enum Dash
{
    Solid,

    /// <summary>3.2 on, 2.2 off: their blocks.</summary>
    Dashed,

    /// <summary>1 on, 2 off: the ball.</summary>
    Dotted,

    /// <summary>0.6 on, 2.4 off: grid.</summary>
    Fine,

    /// <summary>7 on, 3 off: our man who comes late.</summary>
    Long,
}

/// <summary>What stands at the end of a path.</summary>
public enum Cap
{
    None,

    /// <summary>Filled head.</summary>
    Arrow,

    /// <summary>A flat bar across: a block.</summary>
    Flat,
}

/// <summary>A place in points from the diagram's top left corner; y runs down.</summary>
public readonly record struct Spot(double X, double Y);

/// <summary>One drawn thing. Drawn in list order; shades before lines before words.</summary>
public abstract record Shape;

/// <summary>A path through two or more spots.</summary>
public sealed record PathShape(IReadOnlyList<Spot> Spots, double Width = 0.75, Dash Dash = Dash.Solid, Cap End = Cap.None) : Shape;

/// <summary>A box; <paramref name="Stroke"/> 0 = no outline.</summary>
public sealed record BoxShape(double X, double Y, double Width, double Height, Tone Fill = Tone.None, double Stroke = 0.75) : Shape
{
    /// <summary>Hatched at 45 degrees: too few.</summary>
    public bool Hatched { get; init; }
}

public sealed record CircleShape(double X, double Y, double Radius, Tone Fill = Tone.White, double Stroke = 1.2) : Shape;

/// <summary>Words at a spot. <paramref name="Y"/> is the baseline; X is the left, middle or right of the words by <paramref name="Align"/>.</summary>
public sealed record WordShape(double X, double Y, string Text, double Size = 8.5, bool Bold = false, Align Align = Align.Center) : Shape
{
    /// <summary>A white backing 1.5 points larger than the words: for labels that cross lines.</summary>
    public bool Backed { get; init; }

    /// <summary>White words on black.</summary>
    public bool White { get; init; }

    /// <summary>Cut with … beyond this width; 0 = never.</summary>
    public double MaxWidth { get; init; }
}

/// <summary>A picture of lines, circles and words in points: a line of scrimmage, a formation, a front card. Centered in the width at hand.</summary>
/// <param name="Width">Points; at most the width it is placed in.</param>
/// <param name="Height">Points.</param>
/// <param name="Shapes">Drawn in this order.</param>
/// <param name="Description">What it shows, in one sentence, for readers who hear it and for golden tests.</param>
public sealed record Diagram(double Width, double Height, IReadOnlyList<Shape> Shapes, string Description) : Block
{
    public Align Align { get; init; } = Align.Left;
}
