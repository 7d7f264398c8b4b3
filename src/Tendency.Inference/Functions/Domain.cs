using System.Runtime.CompilerServices;

namespace Tendency.Inference.Functions;

/// <summary>
/// Refuses arguments outside a function's domain with an <see cref="ArgumentOutOfRangeException"/> that names argument, value and range.
/// Written as "not inside" throughout, so that NaN is refused too.
/// </summary>
internal static class Domain
{
    /// <summary>Smallest shape; a smaller count is as good as none.</summary>
    public const double Least = 1e-15;

    /// <summary>Largest shape and count.</summary>
    public const double Most = 1e15;

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

    /// <summary>A count, possibly effective and so not whole: 0 to 1e15, beyond which doubles no longer tell neighbors apart.</summary>
    public static void Count(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= 0 && value <= Most))
        {
            throw new ArgumentOutOfRangeException(name, value, $"It must lie between 0 and {Most}.");
        }
    }

    /// <summary>A shape or degrees of freedom, 1e-15 to 1e15: products of a few of them stay in the doubles.</summary>
    public static void Shape(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= Least && value <= Most))
        {
            throw new ArgumentOutOfRangeException(name, value, $"It must lie between {Least} and {Most}.");
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
