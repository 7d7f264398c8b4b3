namespace Tendency.Breakdown.Charts;

/// <summary>Collects the words of one column, giving each new word the next code.</summary>
public sealed class CategoryBuilder
{
    private readonly List<string> _levels = [""];
    private readonly Dictionary<string, ushort> _codes = new(StringComparer.Ordinal) { [""] = 0 };
    private readonly List<ushort> _rows = [];

    /// <param name="name">Column name.</param>
    /// <param name="firstLevels">Levels to number first, in printing order.</param>
    public CategoryBuilder(string name, IEnumerable<string>? firstLevels = null)
    {
        Name = name;
        foreach (var level in firstLevels ?? [])
        {
            _ = CodeFor(level);
        }
    }

    public string Name { get; }

    /// <summary>Rows added so far.</summary>
    public int Count => _rows.Count;

    /// <summary>Adds one row. False when the column already holds as many different words as codes allow; the row then counts as not charted.</summary>
    public bool Add(string word)
    {
        var code = CodeFor(word);
        _rows.Add(code ?? 0);
        return code is not null;
    }

    /// <summary>Adds one row with a code given before.</summary>
    internal void AddCode(ushort code) => _rows.Add(code);

    /// <summary>The code of the row added last.</summary>
    internal ushort LastCode => _rows[^1];

    public CategoryColumn Build() => CategoryColumn.Create(Name, _levels, System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_rows));

    private ushort? CodeFor(string word)
    {
        if (_codes.TryGetValue(word, out var code))
        {
            return code;
        }

        if (_levels.Count > ushort.MaxValue)
        {
            return null;
        }

        code = (ushort)_levels.Count;
        _levels.Add(word);
        _codes.Add(word, code);
        return code;
    }
}
