using Tendency.Breakdown.Charts;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>A row of a situation table.</summary>
/// <param name="Name">As printed: "2nd medium".</param>
/// <param name="Remark">Small, under the name: "4 to 6".</param>
/// <param name="Plays">The plays it counts.</param>
internal sealed record Situation(string Name, string Remark, PlayLog Plays)
{
    /// <summary>How it reads inside a sentence, with its preposition: "on second and medium". Empty = never in a sentence.</summary>
    public string Spoken { get; init; } = "";

    public bool IsTotal { get; init; }

    /// <summary>Set for a row that only names the group below it; then <see cref="Remark"/> stands beside it.</summary>
    public bool IsGroup { get; init; }

    public static Situation Total(PlayLog plays, string name = "All plays") => new(name, "", plays) { IsTotal = true };

    public static Situation Group(string name, PlayLog none, string remark = "") => new(name, remark, none) { IsGroup = true };
}
