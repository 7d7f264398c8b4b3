using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Rows with more or fewer cells than the header, and cells with marks that nobody sees.</summary>
internal sealed class RaggedRows(ChartFile file, bool isWorkbook)
{
    private readonly int _width = file.Headers.Headers.Count;
    private readonly bool _endsInText = file.Headers.IndexOf(ColumnNames.Note) is >= 0 and var note && note == file.Headers.Headers.Count - 1;
    private int _short;
    private int _firstShort;
    private int _marks;
    private int _firstMarks;

    /// <summary>The row with cells that can be read: cells beyond the header joined to a last column note, else reported.</summary>
    public SheetRow Mend(SheetRow row, ICollection<Problem> problems)
    {
        if (row.Cells.Count < _width && !isWorkbook)
        {
            _short++;
            _firstShort = _firstShort == 0 ? row.Line : _firstShort;
        }

        var clean = Cleaned(row);
        var filled = clean.Cells.Count;
        while (filled > _width && string.IsNullOrWhiteSpace(clean.Cells[filled - 1]))
        {
            filled--;
        }

        if (filled <= _width)
        {
            return clean;
        }

        var beyond = string.Join(',', clean.Cells.Skip(_width).Take(filled - _width));
        var place = new Place(file.Name, row.Line, "");
        if (_endsInText)
        {
            problems.Add(new Problem(ReadingRules.CellsBeyondHeader, place, CellText.Shown(beyond), $"The row has {filled - _width} cells beyond the header; they are read as the rest of the note."));
            return clean with { Cells = [.. clean.Cells.Take(_width - 1), string.Join(", ", clean.Cells.Skip(_width - 1).Take(filled - _width + 1).Select(cell => cell.Trim()))] };
        }

        problems.Add(new Problem(ReadingRules.CellsBeyondHeader, place, CellText.Shown(beyond), $"The row has {filled - _width} filled cells beyond the header: '{CellText.Shown(beyond)}' is not read."));
        return clean;
    }

    /// <summary>Says once what was seen in many rows.</summary>
    public void Report(ICollection<Problem> problems)
    {
        if (_short > 0)
        {
            problems.Add(new Problem(ReadingRules.RaggedRow, new Place(file.Name, _firstShort, ""), $"{_short}", $"{_short} rows end before the header does; the missing cells count as blank."));
        }

        if (_marks > 0)
        {
            problems.Add(new Problem(ReadingRules.InvisibleMarks, new Place(file.Name, _firstMarks, ""), $"{_marks}", $"{_marks} rows hold invisible marks (writing direction, zero width); they are not read."));
        }
    }

    private SheetRow Cleaned(SheetRow row)
    {
        var marked = false;
        for (var i = 0; i < row.Cells.Count && !marked; i++)
        {
            marked = CellText.HasMarks(row.Cells[i]);
        }

        if (!marked)
        {
            return row;
        }

        _marks++;
        _firstMarks = _firstMarks == 0 ? row.Line : _firstMarks;
        return row with { Cells = [.. row.Cells.Select(cell => CellText.Clean(cell, out _))] };
    }
}
