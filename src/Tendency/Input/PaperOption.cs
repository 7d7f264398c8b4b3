using System.CommandLine;
using System.CommandLine.Parsing;
using Tendency.Booklet.Pdf;

namespace Tendency.Input;

/// <summary>The option of every command that prints.</summary>
internal static class PaperOption
{
    public static Option<PaperSize> Create() =>
        new("--paper") { Description = "Sheet to print on (default letter).", HelpName = "letter|a4", CustomParser = Paper };

    private static PaperSize Paper(ArgumentResult result)
    {
        var text = result.Tokens[0].Value.ToLowerInvariant();
        if (text is not ("letter" or "a4"))
        {
            result.AddError($"--paper takes letter or a4, not '{text}'.");
        }

        return text == "a4" ? PaperSize.A4 : PaperSize.Letter;
    }
}
