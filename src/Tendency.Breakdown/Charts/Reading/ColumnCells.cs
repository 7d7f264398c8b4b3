using System.Runtime.InteropServices;
using Microsoft.Data.Analysis;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The cells of one column, read row by row. What a text was read as is remembered, for a chart writes the same few texts over and over.</summary>
internal sealed class ColumnCells(ChartColumn column)
{
    // A column of free text would only fill the memory.
    private const int MostRemembered = 4096;

    private readonly Dictionary<string, ushort> _codes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _values = new(StringComparer.Ordinal);
    private readonly CategoryBuilder _choices = new(column.Name, column.Choices);
    private readonly WordCells _words = new();
    private readonly List<int?> _numbers = [];
    private readonly List<string> _texts = [];

    public ChartColumn Column => column;

    /// <summary>The words of the column, if it is one of words.</summary>
    public WordCells Words => _words;

    private bool IsCategory => column.Kind is CellKind.Choice or CellKind.Personnel or CellKind.YardLine;

    private bool IsNumber => column.Kind is CellKind.Number or CellKind.Clock or CellKind.Distance;

    // The label of a game may come from the week file and differ by file.
    private bool IsRemembered => column.Name != ColumnNames.Game && column.Kind is not (CellKind.YardLine or CellKind.Distance or CellKind.Text);

    /// <summary>Adds the cell of the next row.</summary>
    /// <param name="cells">The row.</param>
    /// <param name="written">The cell as written, before anything is taken off it.</param>
    public void Add(RowCells cells, string written)
    {
        if (IsCategory)
        {
            AddCategory(cells, written);
        }
        else if (IsNumber)
        {
            AddNumber(cells, written);
        }
        else if (column.Kind == CellKind.Word)
        {
            AddWord(cells, written);
        }
        else
        {
            _texts.Add(cells.Text(column));
        }
    }

    /// <summary>Fills up with blank cells: a column that an earlier file lacked, or a later one.</summary>
    public void PadTo(int rows)
    {
        if (IsCategory)
        {
            while (_choices.Count < rows)
            {
                _choices.AddCode(0);
            }
        }
        else if (IsNumber)
        {
            CollectionsMarshal.SetCount(_numbers, Math.Max(rows, _numbers.Count));
        }
        else if (column.Kind == CellKind.Word)
        {
            _words.PadTo(rows);
        }
        else
        {
            while (_texts.Count < rows)
            {
                _texts.Add("");
            }
        }
    }

    public CategoryColumn? Category() => IsCategory ? _choices.Build() : null;

    public NumberColumn? Number() => IsNumber ? NumberColumn.Create(column.Name, _numbers) : null;

    public StringDataFrameColumn? Text() => column.Kind == CellKind.Text ? new StringDataFrameColumn(column.Name, _texts) : null;

    private void AddCategory(RowCells cells, string written)
    {
        if (_codes.TryGetValue(written, out var code))
        {
            _choices.AddCode(code);
            return;
        }

        var value = column.Kind switch
        {
            CellKind.Choice => cells.Choice(column),
            CellKind.Personnel => cells.Personnel(column),
            _ => cells.YardLine,
        };
        if (!_choices.Add(value))
        {
            cells.Report(ReadingRules.TooManyWords, column, $"{column.Name} holds more different words than can be counted.");
        }
        else if (value.Length > 0 && IsRemembered && _codes.Count < MostRemembered)
        {
            _codes.Add(written, _choices.LastCode);
        }
    }

    private void AddNumber(RowCells cells, string written)
    {
        if (_values.TryGetValue(written, out var known))
        {
            _numbers.Add(known);
            return;
        }

        var value = column.Kind == CellKind.Distance ? cells.Distance : cells.Number(column);
        _numbers.Add(value);
        if (value is int number && IsRemembered && _values.Count < MostRemembered)
        {
            _values.Add(written, number);
        }
    }

    private void AddWord(RowCells cells, string written)
    {
        if (_values.TryGetValue(written, out var spelling))
        {
            _words.Add(spelling);
            return;
        }

        var word = cells.Word(column);
        var index = _words.Add(word);
        if (word.Length > 0 && IsRemembered && _values.Count < MostRemembered)
        {
            _values.Add(written, index);
        }
    }
}
