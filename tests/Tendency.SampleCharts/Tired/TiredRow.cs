namespace Tendency.SampleCharts.Tired;

/// <summary>What is wrong with one cell of a row, or, with an empty column, with the row itself.</summary>
internal sealed record Slip(string Column, string Right, string What);

/// <summary>A planted mistake as the list gives it: the physical line of the file, what stands there and what should.</summary>
public sealed record Mistake(string File, int Line, string Column, string Wrong, string Right, string What);

/// <summary>A row on its way through a tired night. Clean keeps what the film shows; Cells is what gets written.</summary>
internal sealed class TiredRow(IReadOnlyList<string> headers, string[] clean)
{
    public string[] Clean { get; } = clean;

    public string[] Cells { get; } = [.. clean];

    public List<Slip> Slips { get; } = [];

    public string Film(string header) => Clean[At(header)];

    public string this[string header]
    {
        get => Cells[At(header)];
        set => Cells[At(header)] = value;
    }

    /// <summary>Writes the wrong value and keeps account of the right one.</summary>
    public void Spoil(string header, string wrong, string what)
    {
        Slips.Add(new Slip(header, Film(header), what));
        this[header] = wrong;
    }

    public TiredRow Copy()
    {
        var copy = new TiredRow(headers, Clean);
        Cells.CopyTo(copy.Cells, 0);
        return copy;
    }

    private int At(string header)
    {
        for (var i = 0; i < headers.Count; i++)
        {
            if (headers[i] == header)
            {
                return i;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(header), header, "no such column");
    }
}
