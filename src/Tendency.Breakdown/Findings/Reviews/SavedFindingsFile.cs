using System.Text.Encodings.Web;
using System.Text.Json;

namespace Tendency.Breakdown.Findings.Reviews;

/// <summary>Saved findings as text.</summary>
public static class SavedFindingsFile
{
    private static readonly JsonSerializerOptions s_json = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        IgnoreReadOnlyProperties = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    public static string Write(SavedFindings findings) => JsonSerializer.Serialize(findings, s_json) + "\n";

    /// <returns>Null when the text is none of ours; <paramref name="problem"/> says why.</returns>
    public static SavedFindings? Read(string text, out string problem)
    {
        problem = "";
        try
        {
            return JsonSerializer.Deserialize<SavedFindings>(text, s_json);
        }
        catch (JsonException failure)
        {
            problem = $"line {(failure.LineNumber ?? 0) + 1}: {failure.Message}";
            return null;
        }
    }
}
