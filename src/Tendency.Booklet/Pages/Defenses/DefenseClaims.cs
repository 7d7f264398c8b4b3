using Tendency.Booklet.Pages.Brief;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>Every sentence a defense's brief may choose from, true or not: what they call by down and against a look.</summary>
internal static class DefenseClaims
{
    private const int MostCalls = 5;

    public static IReadOnlyList<Claim> All(Study study)
    {
        var plays = ExtraRush.Plays(study);
        var calls = Calls(study, plays).ToArray();
        return [.. Whens(study, plays).SelectMany(when => calls.Select(call => Of(study, when, call))).OfType<Claim>(), .. Ways(study, plays)];
    }

    /// <summary>How many places were looked at: what the choice pays for.</summary>
    public static int Tried(Study study)
    {
        var plays = ExtraRush.Plays(study);
        return (Whens(study, plays).Count() * Calls(study, plays).Count()) + 1;
    }

    private sealed record When(string Topic, string Anchor, string Words, PlayLog Plays);

    private sealed record Called(string Column, string Value, string Verb, double? Usual);

    private static IEnumerable<Called> Calls(Study study, PlayLog plays)
    {
        if (plays.IsCharted(ColumnNames.Rushers))
        {
            yield return new Called(OwnColumns.ExtraRush, "yes", "bring extra rushers", ExtraRush.Usual(study));
        }

        foreach (var (column, verb) in new[] { (ColumnNames.Front, "line up in"), (ColumnNames.Coverage, "play") })
        {
            foreach (var (value, _) in CrossTab.Values(plays, column).Take(MostCalls))
            {
                yield return new Called(column, value, $"{verb} {(column == ColumnNames.Front ? Words.Title(value) : Words.Plain(value))}", CrossTab.Share(plays, column, value).Share);
            }
        }
    }

    private static IEnumerable<When> Whens(Study study, PlayLog plays) =>
    [
        .. DownDistances.Of(study).Where(row => row.Spoken.Length > 0).Select(row => new When("down", "down-distance", $"On {row.Spoken}", row.Plays)),
        .. Looks(plays, ColumnNames.Formation, "formation", value => $"Against {Words.Plain(value)}"),
        .. Looks(plays, ColumnNames.Personnel, "personnel", value => $"Against {value} personnel"),
    ];

    private static IEnumerable<When> Looks(PlayLog plays, string column, string anchor, Func<string, string> words) =>
        CrossTab.Values(plays, column).Where(value => value.Count < plays.Rows).Select(value => new When(anchor, anchor, words(value.Value), plays.Where(column, value.Value)));

    private static Claim? Of(Study study, When when, Called call)
    {
        var share = study.Of(when.Plays, call.Column, call.Value, call.Usual);
        return share.Plays >= CallVerdict.FewestPlays && share.Doing(call.Verb) is { } doing
            ? new Claim(when.Topic, when.Anchor, $"{when.Words}, they {doing}.", share, "plays", "usual rate", when.Plays, call.Column, call.Value)
            : null;
    }

    private static IEnumerable<Claim> Ways(Study study, PlayLog plays)
    {
        var sided = plays.Where(ColumnNames.PressureTo, "to back", "away");
        var back = study.Of(sided, ColumnNames.PressureTo, "to back", .5);
        var (value, words) = back.Lean() == Lean.Below ? ("away", "away from the back") : ("to back", "from the back's side");
        yield return new Claim("pressure", "rush", $"The extra rusher comes {words}.", study.Of(sided, ColumnNames.PressureTo, value, .5), "pressures, back offset", "even split", sided, ColumnNames.PressureTo, value);
    }
}
