using CsvHelper;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Delimited text to cells: comma, semicolon, tab; quoted line breaks; physical line numbers kept.</summary>
internal static class CsvSheetReader
{
    public static Sheet Read(string file, Stream stream)
    {
        var options = new CsvReaderOptions
        {
            HasHeader = false,
            TrackLineNumbers = true,
            FieldCountMismatch = CsvFieldCountHandling.Skip,
        };
        using var csv = CsvReader.Create(stream, options);
        var rows = new List<SheetRow>();
        while (csv.Read())
        {
            var cells = new string[csv.FieldCount];
            for (var i = 0; i < cells.Length; i++)
            {
                cells[i] = csv.GetString(i);
            }

            rows.Add(new SheetRow((int)csv.LineNumber, cells));
        }

        return new Sheet(file, rows);
    }
}
