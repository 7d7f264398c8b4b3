using System.CommandLine.Parsing;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>Options whose values name columns or dimensions.</summary>
internal static class NameOptions
{
    /// <summary>One name.</summary>
    public static string One(ArgumentResult result) => Known(result, result.Tokens[0].Value) ?? "";

    /// <summary>Several names, separated by commas or in several options.</summary>
    public static string[] Several(ArgumentResult result) =>
    [
        .. result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .Select(word => Known(result, word)).OfType<string>(),
    ];

    private static string? Known(ArgumentResult result, string word)
    {
        var name = DimensionNames.Find(word);
        if (name is null)
        {
            result.AddError(DimensionNames.Unknown(((OptionResult)result.Parent!).Option.Name, word));
        }

        return name;
    }
}
