using Microsoft.Data.Analysis;

namespace Tendency.Breakdown.Charts;

/// <summary>A column of words as codes into a list of levels; code 0 means not charted.</summary>
/// <remarks>Codes live in a <see cref="UInt16DataFrameColumn"/> of the play log's frame; counting reads its buffer, never its cells one by one.</remarks>
public sealed class CategoryColumn
{
    private readonly ReadOnlyMemory<ushort> _codes;

    internal CategoryColumn(UInt16DataFrameColumn column, IReadOnlyList<string> levels)
    {
        Column = column;
        Levels = levels;
        _codes = column.Length == 0 ? default : column.GetReadOnlyDataBuffers().Single()[..(int)column.Length];
    }

    public string Name => Column.Name;

    /// <summary>The words; <c>Levels[0]</c> is the empty text of a cell that was not charted.</summary>
    public IReadOnlyList<string> Levels { get; }

    public ReadOnlySpan<ushort> Codes => _codes.Span;

    internal UInt16DataFrameColumn Column { get; }

    /// <summary>The word in a row; empty when not charted.</summary>
    public string this[int row] => Levels[_codes.Span[row]];

    /// <summary>Whether any cell is charted.</summary>
    public bool IsCharted => Codes.ContainsAnyExcept((ushort)0);

    /// <summary>How many cells are charted.</summary>
    public int ChartedCount => Codes.Length - Codes.Count((ushort)0);

    /// <summary>The words that occur, in the order of the levels: a column keeps its levels when only some of its rows are taken.</summary>
    public string[] UsedLevels()
    {
        var used = new bool[Levels.Count];
        foreach (var code in Codes)
        {
            used[code] = true;
        }

        return [.. Levels.Index().Skip(1).Where(level => used[level.Index]).Select(level => level.Item)];
    }

    /// <summary>The code of a word, or -1 when no cell could hold it.</summary>
    public int CodeOf(string level)
    {
        for (var code = 0; code < Levels.Count; code++)
        {
            if (string.Equals(Levels[code], level, StringComparison.Ordinal))
            {
                return code;
            }
        }

        return -1;
    }

    /// <summary>Builds a column from one code a row.</summary>
    /// <param name="name">Column name.</param>
    /// <param name="levels">Words by code; the first must be empty.</param>
    /// <param name="codes">One code a row, each below the number of levels.</param>
    public static CategoryColumn Create(string name, IReadOnlyList<string> levels, ReadOnlySpan<ushort> codes)
    {
        if (levels.Count == 0 || levels[0].Length > 0)
        {
            throw new ArgumentException("The first level must be empty: it stands for not charted.", nameof(levels));
        }

        return new CategoryColumn(new UInt16DataFrameColumn(name, codes.ToArray()), levels);
    }

    /// <summary>Builds a column from one word a row; empty or null = not charted. Levels come in order of first appearance.</summary>
    public static CategoryColumn FromWords(string name, IEnumerable<string?> words)
    {
        var builder = new CategoryBuilder(name);
        foreach (var word in words)
        {
            builder.Add(word ?? "");
        }

        return builder.Build();
    }

    internal CategoryColumn Take(ReadOnlySpan<int> rows)
    {
        var taken = new ushort[rows.Length];
        var codes = Codes;
        for (var i = 0; i < rows.Length; i++)
        {
            taken[i] = codes[rows[i]];
        }

        return new CategoryColumn(new UInt16DataFrameColumn(Name, taken), Levels);
    }
}
