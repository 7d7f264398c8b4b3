using Tendency.Breakdown.Charts;

namespace Tendency.Input;

/// <summary>Says which of the columns asked for hold nothing.</summary>
internal static class NotCharted
{
    public static void Report(PlayLog plays, IEnumerable<string> names, bool quiet)
    {
        if (plays.Rows == 0 && !quiet)
        {
            Console.Error.WriteLine("no play is left to look at");
            return;
        }

        foreach (var name in names.Where(name => !quiet && !plays.IsCharted(name)))
        {
            Console.Error.WriteLine($"not charted: {name}");
        }
    }
}
