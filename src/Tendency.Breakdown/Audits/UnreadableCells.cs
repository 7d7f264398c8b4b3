using System.Globalization;
using Tendency.Breakdown.Audits.Drives;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>What an unreadable cell most likely should say: the nearest choice, or what the snap before leads to.</summary>
internal static class UnreadableCells
{
    public static Problem WithSuggestion(AuditedCharts charts, DriveAudit walk, Problem problem)
    {
        // A date put back into figures, 10-10, is no distance yet.
        var useless = problem.Rule == ReadingRules.SpreadsheetDamage && problem.Place.Column.Length > 0 && problem.Suggestion.Contains('-', StringComparison.Ordinal);
        if ((problem.Suggestion.Length > 0 && !useless) || problem.Rule.Code is not ("T101" or "T102" or "T105") || charts.ColumnOf(problem.Place.File, problem.Place.Column) is not { } column)
        {
            return problem;
        }

        var meant = column.Name == ColumnNames.Personnel ? UsualPeople(charts, problem) : FromTheDrive(walk, charts, problem, column);
        meant = meant.Length == 0 && column.Kind == CellKind.Choice && problem.Value.Length > 0 ? NearestChoice(column, problem.Value) : meant;
        return meant.Length == 0 && !useless ? problem : problem with { Suggestion = meant };
    }

    private static string NearestChoice(ChartColumn column, string value)
    {
        var key = ColumnCatalogue.Key(value);
        var nearest = column.Choices.Concat(column.AlsoWritten.Where(pair => pair.Value.Length > 0).Select(pair => pair.Key))
            .Select(choice => (choice, Distance: NearestWord.Edits(ColumnCatalogue.Key(choice), key)))
            .Where(c => c.Distance <= (key.Length <= 3 ? 1 : 2) && c.Distance < key.Length)
            .OrderBy(c => c.Distance).ThenByDescending(c => column.Choices.Contains(c.choice)).Select(c => c.choice).FirstOrDefault();
        return nearest is null ? "" : column.Choices.Contains(nearest) ? nearest : column.AlsoWritten[nearest];
    }

    // The people the same formation usually has, if one slip away from what is written.
    private static string UsualPeople(AuditedCharts charts, Problem problem)
    {
        var formation = Glossary.Key(FormationWord.Of(charts.RawAt(problem.Place.File, problem.Place.Line, ColumnNames.Formation)).Shape);
        return charts.PeopleOf(formation).FirstOrDefault(word => NearestWord.Edits(word, problem.Value) == 1) ?? "";
    }

    private static string FromTheDrive(DriveAudit walk, AuditedCharts charts, Problem problem, ChartColumn column)
    {
        if (column.Name is not (ColumnNames.Down or ColumnNames.Distance or ColumnNames.BallOn or ColumnNames.Gain))
        {
            return "";
        }

        var (here, above) = charts.RowsAround(problem.Place.File, problem.Place.Line);
        if (column.Name == ColumnNames.Gain)
        {
            return here is int row && BallChecks.Moved(walk.Snaps[row], walk.After(row)) is int moved ? Text(moved) : "";
        }

        string Cell(string name) => charts.RawAt(problem.Place.File, problem.Place.Line, name);
        var spot = CellReader.TryYardLine(Cell(ColumnNames.BallOn), out var yards) ? yards : (int?)null;
        var states = above is not int before ? [] : NextSnap.After(walk.Snaps[before], 0).States
            .Where(s => column.Name == ColumnNames.Down || Cell(ColumnNames.Down) == Text(s.Down))
            .Where(s => column.Name == ColumnNames.Distance || !int.TryParse(Cell(ColumnNames.Distance), out var toGo) || s.ToGo is null || s.ToGo == toGo)
            .Where(s => column.Name == ColumnNames.BallOn || spot is null || s.ToGoal is null || s.ToGoal == spot).ToArray();
        if (states is not [var state])
        {
            // A first down can be told from the row itself.
            return column.Name == ColumnNames.Distance && Cell(ColumnNames.Down) == "1" && states.Length == 0 && spot is int left ? ToGo(Math.Min(10, left), left) : "";
        }

        string ToGo(int? toGo, int? toGoal) => toGo is not int number ? "" : toGo == toGoal && charts.WritesGoal(problem.Place.File) ? "goal" : Text(number);

        return column.Name switch
        {
            ColumnNames.Down => Text(state.Down),
            ColumnNames.Distance => ToGo(state.ToGo, state.ToGoal),
            _ => state.ToGoal is int toGoal and >= 1 and <= 99 ? CellReader.YardLine(toGoal) : "",
        };
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
