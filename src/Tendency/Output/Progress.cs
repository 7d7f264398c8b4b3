using Spectre.Console;
using Tendency.Input;

namespace Tendency.Output;

/// <summary>Says what is going on, on a terminal only.</summary>
internal static class Progress
{
    /// <summary>Does the work, with a spinner on standard error while it lasts.</summary>
    public static T Of<T>(string doing, Request request, Func<T> work)
    {
        // Asked before the library is touched: a pipe pays nothing for it.
        return request.Quiet || Console.IsErrorRedirected ? work() : OnTerminal(doing, work);
    }

    private static T OnTerminal<T>(string doing, Func<T> work)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return console.Status().Start(Markup.Escape(doing), _ => work());
    }
}
