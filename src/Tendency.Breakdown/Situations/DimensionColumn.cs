using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Situations;

/// <summary>A derived column of words, its levels in printing order.</summary>
internal static class DimensionColumn
{
    public static CategoryColumn Create(string name, int rows, IReadOnlyList<string> levels, Func<int, string> word)
    {
        var builder = new CategoryBuilder(name, levels);
        for (var row = 0; row < rows; row++)
        {
            _ = builder.Add(word(row));
        }

        return builder.Build();
    }
}
