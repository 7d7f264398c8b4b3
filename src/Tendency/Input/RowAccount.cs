using Tendency.Breakdown.Charts;

namespace Tendency.Input;

/// <summary>What became of the rows read, said last on standard error whether or not the command could be done.</summary>
internal static class RowAccount
{
    private static RowTally s_read;

    /// <summary>Rows of charts just read; none of them counts as used until the command is done.</summary>
    public static void Read(RowTally rows) =>
        s_read = new RowTally(s_read.Read + rows.Read, 0, s_read.LeftOut + rows.Used + rows.LeftOut, s_read.SetAside + rows.SetAside);

    /// <summary>The account of a command that was not done.</summary>
    public static string NothingUsed => s_read.ToString();
}
