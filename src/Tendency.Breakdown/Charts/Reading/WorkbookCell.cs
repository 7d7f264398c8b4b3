using System.Globalization;
using ExcelDataReader;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>A workbook's cell as the text a coach sees or means.</summary>
internal static class WorkbookCell
{
    public static string Text(IExcelDataReader reader, int cell)
    {
        return reader.GetValue(cell) switch
        {
            null => "",
            string text => text,
            double number => Number(number),
            bool truth => truth ? "yes" : "no",
            DateTime day => Day(day),
            TimeSpan time => Clock(time),
            var other => Convert.ToString(other, CultureInfo.InvariantCulture) ?? "",
        };
    }

    // 0.1 + 0.2 is not what the cell shows; 15 digits are what a spreadsheet keeps.
    private static string Number(double number) =>
        number == Math.Floor(number) && Math.Abs(number) < 1e15
            ? number.ToString("0", CultureInfo.InvariantCulture)
            : number.ToString("G15", CultureInfo.InvariantCulture);

    // A time without a day counts from the calendar's first days.
    private static string Day(DateTime day) =>
        day.Year < 1901 ? Clock(day.TimeOfDay)
        : day.TimeOfDay == TimeSpan.Zero ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : day.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    // 7:42 typed into a spreadsheet is seven hours and 42 minutes, 0:07:42 is what it says; both mean 7:42 left.
    private static string Clock(TimeSpan time)
    {
        var seconds = (int)Math.Round(time.TotalSeconds);
        return seconds % 60 == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600}:{seconds / 60 % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}");
    }
}
