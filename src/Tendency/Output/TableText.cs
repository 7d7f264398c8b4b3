using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CsvHelper;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Counts;
using Tendency.Input;

namespace Tendency.Output;

/// <summary>Writes a table in the format asked for.</summary>
internal static class TableText
{
    private static readonly JsonWriterOptions s_json = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(OutputTable table, OutputFormat format) => format switch
    {
        OutputFormat.Csv => Csv(table),
        OutputFormat.Json => Json(table),
        _ => Aligned(table),
    };

    private static string Csv(OutputTable table)
    {
        using var stream = new MemoryStream();
        using (var writer = CsvWriter.Create(stream, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            foreach (var row in table.Rows.Select(r => r.Select(Exact)).Prepend(table.Columns))
            {
                writer.WriteRecord([.. row.Select(FormulaText.Safe)]);
            }
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static string Json(OutputTable table)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, s_json))
        {
            writer.WriteStartArray();
            foreach (var row in table.Rows)
            {
                writer.WriteStartObject();
                foreach (var (name, value) in table.Columns.Zip(row))
                {
                    writer.WritePropertyName(name);

                    // Not defined is null, as it is an empty cell in CSV.
                    JsonSerializer.Serialize(writer, value is "" ? null : value);
                }

                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>For a terminal: columns aligned, words to the left and numbers to the right, fractions as whole percent.</summary>
    private static string Aligned(OutputTable table)
    {
        var cells = table.Rows.Select(row => row.Select(Shown).ToArray()).Prepend([.. table.Columns]).ToArray();
        var widths = table.Columns.Select((_, i) => cells.Max(row => row[i].Length)).ToArray();
        var right = table.Columns.Select((_, i) => table.Rows.Any(row => row[i] is int or double or decimal)).ToArray();
        var text = new StringBuilder();
        foreach (var row in cells)
        {
            var line = string.Join("  ", row.Select((cell, i) => right[i] ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i])));
            _ = text.Append(line.TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    private static string Exact(object? value) => value switch
    {
        null => "",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    private static string Shown(object? value) => value switch
    {
        double number => Percent.Short(number),
        _ => Exact(value),
    };
}
