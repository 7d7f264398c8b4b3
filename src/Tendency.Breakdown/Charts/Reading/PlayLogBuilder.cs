using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Collects readable rows column by column and makes the play log of them.</summary>
internal sealed class PlayLogBuilder(Glossary glossary)
{
    private static readonly ChartColumn s_game = ColumnCatalogue.Find(ColumnNames.Game)!;

    private readonly Dictionary<string, ColumnCells> _columns = new(StringComparer.Ordinal);
    private readonly CategoryBuilder _files = new(ColumnNames.SourceFile);
    private readonly List<int?> _lines = [];
    private readonly List<int?> _yardsToGoal = [];
    private ChartFile? _file;
    private (ColumnCells Cells, int Index)[] _ofFile = [];
    private bool _hasBall;

    /// <summary>Adds one row, or sets it aside. Every cell that can not be read leaves a problem.</summary>
    /// <returns>Whether the row is a play.</returns>
    public bool Add(SheetRow row, ChartFile file, ICollection<Problem> problems)
    {
        Begin(file);
        var cells = new RowCells(row, file, problems);
        if (!cells.ReadRequired())
        {
            return false;
        }

        foreach (var (column, index) in _ofFile)
        {
            column.Add(cells, index >= 0 && index < row.Cells.Count ? row.Cells[index] : "");
        }

        _yardsToGoal.Add(cells.YardsToGoal);
        _ = _files.Add(file.Name);
        _lines.Add(row.Line);
        return true;
    }

    /// <param name="problems">Takes columns with more different words than can be counted.</param>
    public PlayLog Build(ICollection<Problem> problems)
    {
        PadAll();
        var columns = ColumnCatalogue.All.Where(column => _columns.ContainsKey(column.Name)).Select(column => _columns[column.Name]).ToArray();
        var choices = columns.Select(column => column.Category()).OfType<CategoryColumn>().ToList();
        if (_columns.TryGetValue(ColumnNames.Formation, out var formations)
            && FormationCells.Strengths(formations.Words, choices.Find(c => c.Name == ColumnNames.Strength)) is { } strengths)
        {
            _ = choices.RemoveAll(c => c.Name == ColumnNames.Strength);
            choices.Add(strengths);
        }

        var files = _files.Build();
        var words = columns.Where(column => column.Column.Kind == CellKind.Word).ToArray();
        foreach (var column in words.Where(column => column.Words.Spellings.Count > ushort.MaxValue))
        {
            problems.Add(new Problem(
                ReadingRules.TooManyWords,
                new Place(files[0], 0, column.Column.Name),
                "",
                $"{column.Column.Name} holds {column.Words.Spellings.Count - 1} different words; those past {ushort.MaxValue - 1} count as not charted."));
        }

        return new PlayLog(
            _lines.Count,
            choices.Concat(words.Select(column => WordColumn.Build(column.Column, column.Words, glossary))).Append(files),
            columns.Select(column => column.Number()).OfType<NumberColumn>()
                .Concat(_hasBall ? [NumberColumn.Create(ColumnNames.YardsToGoal, _yardsToGoal)] : [])
                .Append(NumberColumn.Create(ColumnNames.SourceLine, _lines)),
            columns.Select(column => column.Text()).OfType<Microsoft.Data.Analysis.StringDataFrameColumn>());
    }

    // A column that an earlier file lacked is blank for that file's rows, and the other way round.
    private void Begin(ChartFile file)
    {
        if (ReferenceEquals(file, _file))
        {
            return;
        }

        _file = file;
        _hasBall |= file.Headers.Has(ColumnNames.BallOn);
        var columns = file.Headers.Has(ColumnNames.Game) ? file.Headers.Columns : [s_game, .. file.Headers.Columns];
        foreach (var column in columns.Where(column => !_columns.ContainsKey(column.Name)))
        {
            _columns.Add(column.Name, new ColumnCells(column));
        }

        PadAll();
        _ofFile = [.. columns.Select(column => (_columns[column.Name], file.Headers.IndexOf(column.Name)))];
    }

    private void PadAll()
    {
        foreach (var column in _columns.Values)
        {
            column.PadTo(_lines.Count);
        }
    }
}
