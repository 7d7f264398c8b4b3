using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Rules about a game, or a file, as a whole.</summary>
internal static class GameRules
{
    public static readonly Rule FewSnaps = new("G101", Severity.Note, "an unusual number of snaps", "Check that the film is whole and the game is not in the file twice.", "Fewer than 40 or more than 100 countable snaps of an offense in a game of at least 25.");
    public static readonly Rule HashShares = new("G102", Severity.Warning, "the hashes are lopsided", "Check on film from which side the hash was read.", "One of left, middle, right has under 5 % or over 65 % of at least 40 snaps.");
    public static readonly Rule OneSided = new("G103", Severity.Note, "runs go nearly all to one side", "Check on film that left and right were read from behind the offense.", "Under 15 % or over 85 % of at least 25 runs go left, and in the other games between 30 and 70 %.");
    public static readonly Rule NeverChanges = new("G104", Severity.Note, "a column hardly changes", "Check that no default was left in.", "One value on at least 95 % of at least 40 rows of a game, and on under 80 % in the other games.");
    public static readonly Rule DefaultLeftIn = new("G105", Severity.Warning, "a column sticks at one value", "Look at the film from that row on.", "A run of one value so long that, at its share in the rest of the charts, it has a chance under one in a million.");
    public static readonly Rule ManyBlank = new("G106", Severity.Warning, "a column has many blanks", "Fill the cells, or read its tables with care.", "Blank on more than 10 % of at least 20 rows it applies to, in a game in which it is charted.");
    public static readonly Rule StopsBeingCharted = new("G107", Severity.Warning, "a column stops being charted", "Chart the rest, or leave the column out.", "Blank from a row to the end of the game, 10 rows at least, after being filled on 80 % of at least 10.");
    public static readonly Rule ManyUnknown = new("G108", Severity.Warning, "many calls are charted as unknown", "Look for a better angle.", "Unknown run or unknown pass on more than 15 % of at least 10.");
    public static readonly Rule GamePastedTwice = new("G109", Severity.Error, "a game is in the charts twice", "Delete one of the two.", "Two games agree in down, distance, gain and call on at least 80 % of their rows, 15 at least.");
    public static readonly Rule BlockPastedTwice = new("G110", Severity.Error, "a block of rows is pasted twice", "Delete the second block.", "At least six rows in a row agree with earlier ones of the game in down, distance, ball_on, gain and call.");
    public static readonly Rule WrongTeam = new("G111", Severity.Error, "the chart seems to be of the wrong team", "Correct offense and defense, or take the chart out.", "The team that has the ball in all other games only defends in this one.");
    public static readonly Rule Mirrored = new("G112", Severity.Warning, "left and right seem exchanged", "Look at two or three snaps on film; the camera may have stood behind the defense.", "Runs leave the ball on the other hash where in the other games they leave it on their own (odds of a thousand to one, hash with strength and run side counted half), or two sides go together the other way round than in the other games (z of the difference beyond 4.5, from 20 snaps on).");

    public static IReadOnlyList<CheckedRule> All { get; } =
    [
        new(FewSnaps), new(HashShares, Hash), new(OneSided, RunSide), new(NeverChanges), new(DefaultLeftIn), new(ManyBlank), new(StopsBeingCharted), new(ManyUnknown, RunScheme),
        new(GamePastedTwice, Gain), new(BlockPastedTwice, Gain), new(WrongTeam, Offense, Defense), new(Mirrored, Hash),
    ];
}
