using System.Globalization;
using DocumentFormat.OpenXml.Spreadsheet;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Workbooks;

/// <summary>What a spreadsheet checks while a snap is charted: closed lists and ranges are enforced, words only offered.</summary>
internal static class WorkbookValidation
{
    // A spreadsheet cuts longer prompts off, or refuses the file.
    private const int MostPrompt = 255;

    /// <param name="column">The column of ours.</param>
    /// <param name="letters">Where it stands in the sheet.</param>
    /// <param name="lastRow">Last row to check.</param>
    /// <param name="list">The range of its drop-down; empty = none.</param>
    public static DataValidation Of(ChartColumn column, string letters, uint lastRow, string list)
    {
        var closed = WorkbookLists.IsClosed(column);
        var validation = new DataValidation
        {
            AllowBlank = true,
            ShowInputMessage = true,
            PromptTitle = column.Name,
            Prompt = column.About.Length > MostPrompt ? column.About[..MostPrompt] : column.About,
            SequenceOfReferences = new() { InnerText = $"{letters}2:{letters}{lastRow}" },
        };
        var first = $"{letters}2";
        if (list.Length > 0)
        {
            validation.Type = DataValidationValues.List;
            validation.ShowErrorMessage = closed;
            validation.Formula1 = new Formula1(list);
            Refuse(validation, closed ? "Pick a value of the list." : "");
        }
        else if (column.Kind == CellKind.Number)
        {
            validation.Type = DataValidationValues.Whole;
            validation.Operator = DataValidationOperatorValues.Between;
            validation.Formula1 = new Formula1(column.Least.ToString(CultureInfo.InvariantCulture));
            validation.Formula2 = new Formula2(column.Most.ToString(CultureInfo.InvariantCulture));
            Refuse(validation, $"A whole number from {column.Least} to {column.Most}.");
        }
        else if (column.Kind == CellKind.Distance)
        {
            validation.Type = DataValidationValues.Custom;
            validation.Formula1 = new Formula1($"OR(LOWER({first})=\"goal\",AND(ISNUMBER({first}),{first}>={column.Least},{first}<={column.Most},{first}=INT({first})))");
            Refuse(validation, $"Whole yards from {column.Least} to {column.Most}, or goal.");
        }

        return validation;
    }

    private static void Refuse(DataValidation validation, string message)
    {
        if (message.Length > 0)
        {
            validation.ShowErrorMessage = true;
            validation.ErrorStyle = DataValidationErrorStyleValues.Stop;
            validation.ErrorTitle = "Not a value of this column";
            validation.Error = message;
        }
    }
}
