namespace Tendency.Inference.Intervals;

/// <summary>A range of plausible values: <c>Low</c> is at most <c>High</c>; both in the unit of the estimate (a share is a fraction).</summary>
public readonly record struct Interval
{
    /// <param name="low">Lower limit; may be negative infinity.</param>
    /// <param name="high">Upper limit; may be positive infinity.</param>
    /// <exception cref="ArgumentException">A limit is not a number, or <paramref name="low"/> is above <paramref name="high"/>.</exception>
    public Interval(double low, double high)
    {
        if (double.IsNaN(low) || double.IsNaN(high) || low > high)
        {
            throw new ArgumentException($"An interval needs low <= high, got {low} and {high}.", nameof(low));
        }

        Low = low;
        High = high;
    }

    /// <summary>Lower limit, possibly negative infinity.</summary>
    public double Low { get; }

    /// <summary>Upper limit, possibly infinity.</summary>
    public double High { get; }

    /// <summary>High less Low; 0 for a point.</summary>
    public double Width => High - Low;

    /// <summary>Whether <paramref name="value"/> lies inside, limits included; no for NaN.</summary>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>The same interval cut to the range of a share, 0 to 1.</summary>
    public Interval ClippedToShare() => new(Math.Clamp(Low, 0, 1), Math.Clamp(High, 0, 1));
}
