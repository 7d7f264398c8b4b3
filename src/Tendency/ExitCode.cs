namespace Tendency;

/// <summary>What the command tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done, nothing to report.</summary>
    public const int Done = 0;

    /// <summary>Done, with problems reported.</summary>
    public const int DoneWithProblems = 1;

    /// <summary>Not done: bad arguments, or no readable play.</summary>
    public const int NotDone = 2;
}
