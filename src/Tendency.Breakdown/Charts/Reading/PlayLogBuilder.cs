using Microsoft.Data.Analysis;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Collects readable rows column by column and makes the play log of them.</summary>
internal sealed class PlayLogBuilder(Glossary glossary)
{
    private static readonly ChartColumn s_game = ColumnCatalogue.Find(ColumnNames.Game)!;

    private readonly Dictionary<string, CategoryBuilder> _choices = [];
    private readonly Dictionary<string, List<string>> _words = [];
    private readonly Dictionary<string, List<int?>> _numbers = [];
    private readonly Dictionary<string, List<string>> _texts = [];
    private readonly CategoryBuilder _files = new(ColumnNames.SourceFile);
    private readonly List<int?> _lines = [];
    private int _rows;

    /// <summary>Adds one row, or sets it aside. Every cell that can not be read leaves a problem.</summary>
    /// <returns>Whether the row is a play.</returns>
    public bool Add(SheetRow row, ChartFile file, ICollection<Problem> problems)
    {
        var cells = new RowCells(row, file, problems);
        if (!cells.ReadRequired())
        {
            return false;
        }

        foreach (var column in file.Headers.Columns)
        {
            AddCell(column, cells);
        }

        if (!file.Headers.Has(ColumnNames.Game))
        {
            AddCell(s_game, cells);
        }

        if (file.Headers.Has(ColumnNames.BallOn))
        {
            Add(Numbers(ColumnNames.YardsToGoal), cells.YardsToGoal);
        }

        _ = _files.Add(file.Name);
        _lines.Add(row.Line);
        _rows++;
        return true;
    }

    /// <param name="problems">Takes columns with more different words than can be counted.</param>
    public PlayLog Build(ICollection<Problem> problems)
    {
        foreach (var (name, words) in _words.Where(pair => pair.Value.Count > ushort.MaxValue && pair.Value.Distinct(StringComparer.Ordinal).Count() >= ushort.MaxValue))
        {
            problems.Add(new Problem(ReadingRules.TooManyWords, new Place(_files.Build()[0], 0, name), "", $"{name} holds {words.Distinct(StringComparer.Ordinal).Count()} different words; the last ones count as not charted."));
        }

        var choices = _choices.Values.Select(Padded).ToList();
        if (_words.TryGetValue(ColumnNames.Formation, out var formations)
            && FormationCells.Strengths(Padded(formations, ""), choices.Find(c => c.Name == ColumnNames.Strength)) is { } strengths)
        {
            _ = choices.RemoveAll(c => c.Name == ColumnNames.Strength);
            choices.Add(strengths);
        }

        var categories = choices
            .Concat(_words.Select(pair => WordColumn.Build(ColumnCatalogue.Find(pair.Key)!, Padded(pair.Value, ""), glossary)))
            .Append(_files.Build());
        var numbers = _numbers.Select(pair => NumberColumn.Create(pair.Key, Padded(pair.Value, null)))
            .Append(NumberColumn.Create(ColumnNames.SourceLine, _lines));
        var texts = _texts.Select(pair => new StringDataFrameColumn(pair.Key, Padded(pair.Value, "")));
        return new PlayLog(_rows, categories, numbers, texts);
    }

    private void AddCell(ChartColumn column, RowCells cells)
    {
        switch (column.Kind)
        {
            case CellKind.Choice:
                var choices = Choices(column);
                Pad(choices);
                _ = choices.Add(cells.Choice(column));
                break;
            case CellKind.Personnel or CellKind.YardLine:
                var written = Choices(column);
                Pad(written);
                if (!written.Add(column.Kind == CellKind.Personnel ? cells.Personnel(column) : cells.YardLine))
                {
                    cells.Report(ReadingRules.TooManyWords, column, $"{column.Name} holds more different words than can be counted.");
                }

                break;
            case CellKind.Word:
                Add(_words.TryGetValue(column.Name, out var words) ? words : _words[column.Name] = [], cells.Word(column), "");
                break;
            case CellKind.Distance:
                Add(Numbers(column.Name), cells.Distance);
                break;
            case CellKind.Number or CellKind.Clock:
                Add(Numbers(column.Name), cells.Number(column));
                break;
            default:
                Add(_texts.TryGetValue(column.Name, out var texts) ? texts : _texts[column.Name] = [], cells.Text(column), "");
                break;
        }
    }

    private List<int?> Numbers(string name) => _numbers.TryGetValue(name, out var list) ? list : _numbers[name] = [];

    private CategoryBuilder Choices(ChartColumn column) =>
        _choices.TryGetValue(column.Name, out var builder) ? builder : _choices[column.Name] = new CategoryBuilder(column.Name, column.Choices);

    // A column that an earlier file lacked is blank for that file's rows.
    private void Add(List<int?> list, int? value) => Add(list, value, null);

    private void Add<T>(List<T> list, T value, T blank)
    {
        while (list.Count < _rows)
        {
            list.Add(blank);
        }

        list.Add(value);
    }

    private void Pad(CategoryBuilder builder)
    {
        while (builder.Count < _rows)
        {
            _ = builder.Add("");
        }
    }

    private CategoryColumn Padded(CategoryBuilder builder)
    {
        Pad(builder);
        return builder.Build();
    }

    private List<T> Padded<T>(List<T> list, T blank)
    {
        while (list.Count < _rows)
        {
            list.Add(blank);
        }

        return list;
    }
}
