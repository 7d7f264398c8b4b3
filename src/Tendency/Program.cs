using System.CommandLine;
using System.CommandLine.Invocation;
using Tendency;
using Tendency.Commands;

var root = new RootCommand("Turns charts of an opponent's snaps into decisions: audited counts, how sure each is, and a scouting booklet.")
{
    BookletCommand.Create(),
    TablesCommand.Create(),
    AuditCommand.Create(),
};
ChartCommand.ShowExamples(root);

var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
if (parsed.Action is ParseErrorAction error)
{
    // The whole help under a mistyped option hides the one line that says what is wrong.
    error.ShowHelp = false;
}

if (parsed.Errors.Count > 0)
{
    foreach (var problem in parsed.Errors)
    {
        Console.Error.WriteLine(problem.Message);
    }

    Console.Error.WriteLine($"See: tendency {(parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ")}--help");
    return ExitCode.NotDone;
}

try
{
    return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (CommandException failure)
{
    Console.Error.WriteLine(failure.Message);
    return ExitCode.NotDone;
}
catch (IOException failure)
{
    Console.Error.WriteLine(failure.Message);
    return ExitCode.NotDone;
}
catch (UnauthorizedAccessException failure)
{
    Console.Error.WriteLine(failure.Message);
    return ExitCode.NotDone;
}
