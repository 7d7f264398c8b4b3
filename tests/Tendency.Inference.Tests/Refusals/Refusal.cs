using System.Collections;

namespace Tendency.Inference.Tests.Refusals;

/// <summary>A call with one argument outside its range.</summary>
/// <param name="Member">Type and member, as in "OneProportion.Wilson"; a constructor is "Type.new".</param>
/// <param name="Argument">The argument that is wrong.</param>
/// <param name="Value">What stands in it, for the failure's message.</param>
/// <param name="Call">The call; its result may stand only where <paramref name="MayAnswer"/>.</param>
/// <param name="MayAnswer">Whether an answer without NaN will do: infinity is at home in some functions.</param>
internal sealed record Refusal(string Member, string Argument, string Value, Func<object?> Call, bool MayAnswer)
{
    private static readonly double[] s_wild = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1];

    /// <summary>A call that must be refused.</summary>
    public static Refusal Of(string member, string argument, string value, Func<object?> call) => new(member, argument, value, call, false);

    /// <summary>The call with each of its numbers replaced in turn by NaN, both infinities and -1, and a level by 0 and 1 too.</summary>
    /// <param name="arguments">Their names, parted by blanks.</param>
    /// <param name="good">Numbers that are accepted.</param>
    public static IEnumerable<Refusal> Numbers(string member, string arguments, double[] good, Func<double[], object?> call)
    {
        foreach (var (i, argument) in arguments.Split(' ').Index())
        {
            var isLevel = argument.EndsWith("evel", StringComparison.Ordinal);
            foreach (var value in isLevel ? [.. s_wild, 0, 1] : s_wild)
            {
                double[] numbers = [.. good];
                numbers[i] = value;
                yield return new Refusal(member, argument, $"{value}", () => call(numbers), MayAnswer: !isLevel && !double.IsNaN(value));
            }
        }
    }

    /// <summary>What is wrong with the outcome; null if it was refused by name or, where it may, answered with numbers.</summary>
    public string? Complaint()
    {
        object? answer;
        try
        {
            answer = Call();
        }
        catch (ArgumentException refused)
        {
            return refused.ParamName == Argument ? null : $"{this}: refused {refused.ParamName}: {refused.Message}";
        }
        catch (Exception other)
        {
            return $"{this}: {other.GetType().Name}: {other.Message}";
        }

        return MayAnswer && !HoldsNaN(answer) ? null : $"{this}: answered {answer}";
    }

    public override string ToString() => $"{Member}({Argument}: {Value})";

    private static bool HoldsNaN(object? answer) => answer switch
    {
        null or string => false,
        double number => double.IsNaN(number),
        IEnumerable list => list.Cast<object?>().Any(HoldsNaN),
        _ => answer.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0 && p.PropertyType == typeof(double)).Any(p => HoldsNaN(p.GetValue(answer))),
    };
}
