using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Tendency.Commands;

/// <summary>A command with a one-line description and worked examples under its help.</summary>
internal sealed class ChartCommand(string name, string description, params string[] examples) : Command(name, description)
{
    public IReadOnlyList<string> Examples { get; } = examples;

    /// <summary>Makes <c>--help</c> of every command end with its examples.</summary>
    public static void ShowExamples(RootCommand root)
    {
        foreach (var option in root.Options.OfType<HelpOption>())
        {
            option.Action = new ExamplesAfterHelp((HelpAction)option.Action!);
        }
    }

    private sealed class ExamplesAfterHelp(HelpAction help) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            var code = help.Invoke(parseResult);
            if (parseResult.CommandResult.Command is ChartCommand command)
            {
                var output = parseResult.InvocationConfiguration.Output;
                output.WriteLine("Examples:");
                foreach (var example in command.Examples)
                {
                    output.WriteLine($"  tendency {command.Name} {example}");
                }

                output.WriteLine();
            }

            return code;
        }
    }
}
