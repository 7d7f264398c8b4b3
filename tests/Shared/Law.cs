using CsCheck;

namespace Tendency.Tests.Shared;

/// <summary>Tries a law on generated values. Always the same values: CsCheck's own sampling fixes only the first of them.</summary>
internal static class Law
{
    public static void Holds<T1, T2>(Gen<(T1, T2)> values, int times, Action<T1, T2> law) =>
        Holds(values, times, v => law(v.Item1, v.Item2));

    public static void Holds<T1, T2, T3>(Gen<(T1, T2, T3)> values, int times, Action<T1, T2, T3> law) =>
        Holds(values, times, v => law(v.Item1, v.Item2, v.Item3));

    public static void Holds<T1, T2, T3, T4, T5>(Gen<(T1, T2, T3, T4, T5)> values, int times, Action<T1, T2, T3, T4, T5> law) =>
        Holds(values, times, v => law(v.Item1, v.Item2, v.Item3, v.Item4, v.Item5));

    public static void Holds<T>(Gen<T> values, int times, Action<T> law)
    {
        var chance = new PCG(1, 20_010_824);
        for (var i = 0; i < times; i++)
        {
            var value = values.Generate(chance, null, out _);
            try
            {
                law(value);
            }
            catch (Exception broken)
            {
                throw new InvalidOperationException($"Broken by {Check.Print(value)}: {broken.Message}", broken);
            }
        }
    }
}
