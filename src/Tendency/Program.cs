using System.CommandLine;
using System.CommandLine.Invocation;
using Tendency;
using Tendency.Commands;
using Tendency.Input;

var root = new RootCommand("Turns charts of an opponent's snaps into decisions: audited counts, how sure each is, and a scouting booklet.")
{
    BookletCommand.Create(),
    TablesCommand.Create(),
    TellsCommand.Create(),
    GuessCommand.Create(),
    FrontsCommand.Create(),
    SheetCommand.Create(),
    SelfScoutCommand.Create(),
    ReviewCommand.Create(),
    ScriptCommand.Create(),
    AuditCommand.Create(),
    AgreeCommand.Create(),
    WorkbookCommand.Create(),
};
ChartCommand.ShowExamples(root);

var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
if (parsed.Action is ParseErrorAction)
{
    // The whole help under a mistyped option would hide the one line that says what is wrong.
    foreach (var error in parsed.Errors)
    {
        Console.Error.WriteLine(error.Message);
    }

    Console.Error.WriteLine($"See: tendency {(parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ")}--help");
    Console.Error.WriteLine(RowAccount.NothingUsed);
    return ExitCode.NotDone;
}

try
{
    return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (Exception failure) when (failure is CommandException or IOException or UnauthorizedAccessException)
{
    // With standard error closed there is nobody to tell.
    try
    {
        Console.Error.WriteLine(failure.Message);
        Console.Error.WriteLine(RowAccount.NothingUsed);
    }
    catch (IOException)
    {
    }
    catch (UnauthorizedAccessException)
    {
    }

    return ExitCode.NotDone;
}
