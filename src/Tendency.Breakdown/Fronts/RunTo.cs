namespace Tendency.Breakdown.Fronts;

/// <summary>The run's side against the side the deep back stands on before the snap.</summary>
public enum RunTo
{
    ToBack,
    Away,
}

/// <summary>The two sides as they are written in charts, files and output.</summary>
public static class RunToWords
{
    public const string ToBack = "to back";
    public const string Away = "away";

    public static string Word(this RunTo side) => side == RunTo.ToBack ? ToBack : Away;

    public static RunTo Other(this RunTo side) => side == RunTo.ToBack ? RunTo.Away : RunTo.ToBack;

    /// <summary>Null when the word is neither side.</summary>
    public static RunTo? Parse(string word) => word.Trim().ToLowerInvariant() switch
    {
        ToBack or "to" or "to_back" => RunTo.ToBack,
        Away or "away from back" => RunTo.Away,
        _ => null,
    };
}
