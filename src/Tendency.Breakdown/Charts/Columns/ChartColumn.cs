namespace Tendency.Breakdown.Charts.Columns;

/// <summary>What a cell of a column may hold.</summary>
public enum CellKind
{
    /// <summary>One of a closed list of values.</summary>
    Choice,

    /// <summary>A word of the trade or of the staff.</summary>
    Word,

    /// <summary>A whole number within a range.</summary>
    Number,

    /// <summary>Minutes and seconds, kept as seconds.</summary>
    Clock,

    /// <summary>Yards to gain, or <c>goal</c>.</summary>
    Distance,

    /// <summary>A yard line.</summary>
    YardLine,

    /// <summary>Backs and tight ends, two digits.</summary>
    Personnel,

    /// <summary>Copied through.</summary>
    Text,
}

/// <summary>One column of the play chart.</summary>
/// <param name="Name">Canonical header.</param>
/// <param name="Kind">What a cell holds.</param>
/// <param name="About">One line for the workbook's help sheet and for messages.</param>
public sealed record ChartColumn(string Name, CellKind Kind, string About)
{
    public bool Required { get; init; }

    /// <summary>Canonical values of a closed list, in printing order.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Other ways to write a choice, in lower case without spaces.</summary>
    public IReadOnlyDictionary<string, string> AlsoWritten { get; init; } = new Dictionary<string, string>();

    /// <summary>Least and greatest number, limits included.</summary>
    public int Least { get; init; } = int.MinValue;

    public int Most { get; init; } = int.MaxValue;

    /// <summary>Glossary kind of a word; empty = the staff's own words only.</summary>
    public string GlossaryKind { get; init; } = "";
}
