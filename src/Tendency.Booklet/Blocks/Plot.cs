namespace Tendency.Booklet.Blocks;

/// <summary>A labelled place on an axis.</summary>
public readonly record struct Tick(double At, string Label);

/// <summary>An axis in words; it runs from Low to High.</summary>
public sealed record PlotAxis(double Low, double High, IReadOnlyList<Tick> Ticks, string Words = "");

/// <summary>A line through points, named at its right end.</summary>
public sealed record PlotLine(IReadOnlyList<double> X, IReadOnlyList<double> Y, string Name)
{
    /// <summary>The line we recommend: heavy, its name bold.</summary>
    public bool Winner { get; init; }
}

/// <summary>A dot with an optional range and words under the axis below it.</summary>
public sealed record PlotDot(double X, double Y, double? Low = null, double? High = null)
{
    public bool Solid { get; init; }

    public string Label { get; init; } = "";
}

/// <summary>A band across the plot: a range of x (upright) or of y (level), with words on the spot.</summary>
public sealed record PlotBand(double Low, double High, bool Upright, string Words = "");

/// <summary>A straight reference line at an x (upright) or a y (level).</summary>
public sealed record PlotRule(double At, bool Upright, string Words = "", bool Dotted = false);

/// <summary>A ring with words and a leader: "even at 38%".</summary>
public sealed record PlotRing(double X, double Y, string Words);

/// <summary>A plot of numbers on two axes, with names written on the spot and no legend.</summary>
/// <param name="Across">The x axis.</param>
/// <param name="Up">The y axis.</param>
/// <param name="Height">Points, axis words included.</param>
/// <param name="Description">What it shows, in one sentence, for readers who hear it and for golden tests.</param>
public sealed record Plot(PlotAxis Across, PlotAxis Up, double Height, string Description) : Block
{
    public IReadOnlyList<PlotBand> Bands { get; init; } = [];

    public IReadOnlyList<PlotRule> Rules { get; init; } = [];

    public IReadOnlyList<PlotLine> Lines { get; init; } = [];

    public IReadOnlyList<PlotDot> Dots { get; init; } = [];

    public IReadOnlyList<PlotRing> Rings { get; init; } = [];

    /// <summary>Points kept at the right for the lines' names.</summary>
    public double NameWidth { get; init; } = 40;
}
