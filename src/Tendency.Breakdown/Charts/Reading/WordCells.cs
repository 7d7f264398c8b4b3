namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The words of one column as charted, each different spelling kept once; a chart of a season has a few dozen.</summary>
internal sealed class WordCells
{
    private readonly Dictionary<string, int> _indexes = new(StringComparer.Ordinal) { [""] = 0 };
    private readonly List<string> _spellings = [""];
    private readonly List<int> _uses = [0];
    private readonly List<int> _rows = [];

    /// <summary>Rows added so far.</summary>
    public int Count => _rows.Count;

    /// <summary>The spellings in order of first appearance; the first is the blank cell.</summary>
    public IReadOnlyList<string> Spellings => _spellings;

    /// <summary>How many rows hold each spelling.</summary>
    public IReadOnlyList<int> Uses => _uses;

    /// <summary>Adds one row and returns the number of its spelling.</summary>
    public int Add(string word)
    {
        if (!_indexes.TryGetValue(word, out var index))
        {
            index = _spellings.Count;
            _indexes.Add(word, index);
            _spellings.Add(word);
            _uses.Add(0);
        }

        Add(index);
        return index;
    }

    /// <summary>Adds one row with a spelling seen before.</summary>
    public void Add(int spelling)
    {
        _rows.Add(spelling);
        _uses[spelling]++;
    }

    public void PadTo(int rows)
    {
        while (_rows.Count < rows)
        {
            Add(0);
        }
    }

    /// <summary>The column, each row under what its spelling is printed as; levels in order of first appearance.</summary>
    /// <param name="name">Column name.</param>
    /// <param name="printed">One word a spelling; empty = not charted.</param>
    public CategoryColumn Column(string name, IReadOnlyList<string> printed)
    {
        var levels = new CategoryBuilder(name);
        var codes = new int[printed.Count];
        Array.Fill(codes, -1);
        foreach (var spelling in _rows)
        {
            if (codes[spelling] >= 0)
            {
                levels.AddCode((ushort)codes[spelling]);
            }
            else
            {
                codes[spelling] = levels.Add(printed[spelling]) ? levels.LastCode : 0;
            }
        }

        return levels.Build();
    }

    /// <summary>The spelling in each row.</summary>
    public IEnumerable<string> Words => _rows.Select(spelling => _spellings[spelling]);
}
