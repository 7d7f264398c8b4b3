using System.Runtime.CompilerServices;

namespace Tendency.Inference.Functions;

/// <summary>
/// Refuses arguments outside a function's domain with an <see cref="ArgumentOutOfRangeException"/> that names argument, value and range.
/// Written as "not inside" throughout, so that NaN is refused too.
/// </summary>
internal static class Domain
{
    /// <summary>A confidence level, strictly between 0 and 1.</summary>
    public static void Level(double level, [CallerArgumentExpression(nameof(level))] string? name = null)
    {
        if (!(level > 0 && level < 1))
        {
            throw new ArgumentOutOfRangeException(name, level, "A level lies strictly between 0 and 1.");
        }
    }

    /// <summary>A probability, 0 and 1 included.</summary>
    public static void Probability(double p, [CallerArgumentExpression(nameof(p))] string? name = null)
    {
        if (!(p >= 0 && p <= 1))
        {
            throw new ArgumentOutOfRangeException(name, p, "A probability lies between 0 and 1.");
        }
    }

    /// <summary>A finite number above 0.</summary>
    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be a finite number above 0.");
        }
    }

    /// <summary>A finite number, 0 or more.</summary>
    public static void NotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be a finite number, 0 or more.");
        }
    }

    /// <summary>A finite number.</summary>
    public static void Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be a finite number.");
        }
    }

    /// <summary>A number, possibly infinite.</summary>
    public static void Number(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (double.IsNaN(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be a number.");
        }
    }

    /// <summary>A position in a list of <paramref name="count"/>.</summary>
    public static void Position(int index, int count, [CallerArgumentExpression(nameof(index))] string? name = null)
    {
        if (index < 0 || index >= count)
        {
            throw new ArgumentOutOfRangeException(name, index, $"There are {count} of them, counted from 0.");
        }
    }
}
