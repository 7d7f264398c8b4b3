using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>The argument and options that every command on charts takes.</summary>
internal sealed class CommonOptions
{
    private readonly Argument<string[]> _charts = new("charts")
    {
        Description = "Chart files (csv, tsv, xlsx), folders of charts, or a week.toml.",
        Arity = ArgumentArity.OneOrMore,
        CustomParser = Paths,
    };

    private readonly Option<string?> _week = new("--week") { Description = "Week file to use instead of the folder's.", HelpName = "FILE" };

    private readonly Option<Condition[]> _only = new("--only")
    {
        Description = "Count only plays with this value; may be repeated, all must hold.",
        HelpName = "name=value[,value]",
        CustomParser = Conditions,
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<double?> _level = new("--level") { Description = "Level of the intervals, between 0 and 1 (default 0.95).", HelpName = "0.95", CustomParser = LevelOf };

    private readonly Option<OutputFormat> _format = new("--format") { Description = "How to write data.", HelpName = "text|csv|json", CustomParser = FormatOf };

    private readonly Option<string?> _output = new("-o", "--output") { Description = "File to write instead of standard output.", HelpName = "FILE" };

    private readonly Option<int> _seed = new("--seed") { Description = "Seed of everything that draws at random (default 1).", HelpName = "N", DefaultValueFactory = _ => 1, CustomParser = SeedOf };

    private readonly Option<bool> _quiet = new("--quiet") { Description = "Say nothing but the row accounting." };

    private readonly Option<string?> _corrections = new("--corrections") { Description = "Accepted corrections to apply while reading; the charts stay as they are.", HelpName = "FILE" };

    private readonly Option<string?> _sheet = new("--sheet") { Description = "Sheet of a workbook to read (default: the first).", HelpName = "NAME" };

    private readonly Option<bool> _noColor = new("--no-color") { Description = "No colors on a terminal (none are used)." };

    /// <summary>Adds them to a command.</summary>
    public CommonOptions AddTo(Command command)
    {
        command.Add(_charts);
        foreach (var option in (Option[])[_week, _only, _level, _format, _output, _seed, _corrections, _sheet, _quiet, _noColor])
        {
            command.Add(option);
        }

        return this;
    }

    public Request Read(ParseResult parsed) => new(
        parsed.GetValue(_charts) ?? [],
        parsed.GetValue(_week),
        parsed.GetValue(_only) ?? [],
        parsed.GetValue(_level),
        parsed.GetValue(_format),
        parsed.GetValue(_output),
        parsed.GetValue(_seed),
        parsed.GetValue(_corrections),
        parsed.GetValue(_sheet),
        parsed.GetValue(_quiet));

    // A variadic argument would take a mistyped option for a file.
    private static string[] Paths(ArgumentResult result)
    {
        foreach (var token in result.Tokens.Where(t => t.Value.StartsWith('-')))
        {
            result.AddError($"Unknown option '{token.Value}'.");
        }

        return [.. result.Tokens.Select(t => t.Value)];
    }

    private static Condition[] Conditions(ArgumentResult result)
    {
        var conditions = new List<Condition>();
        foreach (var token in result.Tokens.Select(t => t.Value))
        {
            var equals = token.IndexOf('=', StringComparison.Ordinal);
            var name = equals > 0 ? DimensionNames.Find(token[..equals]) : null;
            var values = token[(equals + 1)..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (equals <= 0 || values.Length == 0)
            {
                result.AddError($"--only takes name=value, not '{token}'.");
            }
            else if (name is null)
            {
                result.AddError(DimensionNames.Unknown("--only", token[..equals]));
            }
            else
            {
                conditions.Add(new Condition(name, values));
            }
        }

        return [.. conditions];
    }

    private static double? LevelOf(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var level) && level is > 0 and < 1)
        {
            return level;
        }

        result.AddError($"--level takes a number between 0 and 1, for example 0.95, not '{text}'.");
        return null;
    }

    private static OutputFormat FormatOf(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (Enum.TryParse<OutputFormat>(text, ignoreCase: true, out var format) && Enum.IsDefined(format) && !char.IsAsciiDigit(text[0]))
        {
            return format;
        }

        result.AddError($"--format takes text, csv or json, not '{text}'.");
        return OutputFormat.Text;
    }

    private static int SeedOf(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seed))
        {
            return seed;
        }

        result.AddError($"--seed takes a whole number from 0 to {int.MaxValue}, not '{text}'.");
        return 0;
    }
}
