using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tendency.Breakdown.Findings.Reviews;

/// <summary>Saved findings as text.</summary>
public static partial class SavedFindingsFile
{
    private static readonly Shape s_json = new(new JsonSerializerOptions
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        IgnoreReadOnlyProperties = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    });

    public static string Write(SavedFindings findings) => JsonSerializer.Serialize(findings, s_json.SavedFindings) + "\n";

    /// <returns>Null when the text is none of ours; <paramref name="problem"/> says why.</returns>
    public static SavedFindings? Read(string text, out string problem)
    {
        problem = "";
        try
        {
            return JsonSerializer.Deserialize(text, s_json.SavedFindings);
        }
        catch (JsonException failure)
        {
            problem = $"line {(failure.LineNumber ?? 0) + 1}: {failure.Message}";
            return null;
        }
    }

    // Written at compile time: reading the types by reflection would take longer than the file.
    [JsonSerializable(typeof(SavedFindings))]
    private sealed partial class Shape : JsonSerializerContext;
}
