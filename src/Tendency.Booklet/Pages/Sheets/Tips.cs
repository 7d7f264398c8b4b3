using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>What players can see before the snap and what comes then, as far as it is sure.</summary>
internal static class Tips
{
    public const int Most = 6;

    // Known on the field before the snap. Score, clock and the call before are the staff's business.
    private static readonly string[] s_seen = [ColumnNames.BackSet, ColumnNames.BackSide, ColumnNames.Attached, ColumnNames.Wing, ColumnNames.Motion, ColumnNames.Tempo];

    // Below this even all of them would be a thin promise to make to a player (common practice: watch a habit from eight plays on).
    private const int FewestPlays = 8;

    private const double SamePlays = .5;

    private sealed record Seen(string Cue, PlayLog Plays);

    /// <summary>
    /// Run or pass, at most six, none that repeats another. Sure: the range leaves out an even split although every cue looked at is paid for
    /// (Bonferroni), or a tell held on games left out. The rest, fewer, only pass the ordinary test of the sideline sheet.
    /// </summary>
    public static (IReadOnlyList<Tip> Sure, IReadOnlyList<Tip> Leans) Calls(Study study)
    {
        var cues = Cues(study).Where(cue => cue.Plays.Rows >= FewestPlays).ToArray();
        var strict = study with { Ranges = study.Ranges.At(1 - ((1 - study.Level) / Math.Max(1, cues.Length))) };
        var paid = cues.Where(cue => CallOf(strict, cue.Plays).Share.Differs).Concat(Held(study)).ToArray();
        var sure = Distinct([], Ranked(study, paid));
        return (sure, [.. Distinct(sure, Ranked(study, cues.Except(paid))).Skip(sure.Count)]);
    }

    // What is most to be expected stands first, few plays leaning on all; a broad cue waits behind the narrow ones it is made of.
    private static IEnumerable<Tip> Ranked(Study study, IEnumerable<Seen> seen) =>
        seen.Select(cue => (Tip: TipOf(study, cue), cue.Plays)).Where(cue => cue.Tip.Share.Differs)
            .OrderByDescending(cue => study.Expected(ColumnNames.Call, cue.Tip.Expect, cue.Plays)).Select(cue => cue.Tip);

    private static List<Tip> Distinct(IReadOnlyList<Tip> before, IEnumerable<Tip> tips)
    {
        List<Tip> chosen = [.. before];
        foreach (var tip in tips)
        {
            if (chosen.Count < Most && !chosen.Exists(other => other.Cue == tip.Cue || (other.Expect == tip.Expect && Overlap(other, tip) > SamePlays)))
            {
                chosen.Add(tip);
            }
        }

        return chosen;
    }

    private static IEnumerable<Seen> Cues(Study study)
    {
        var plays = study.Plays;
        foreach (var situation in SheetSituation.Of(study).Where(situation => situation.Spoken.Length > 0))
        {
            yield return new Seen(situation.Spoken, situation.PlaysOf(study));
        }

        foreach (var column in new[] { ColumnNames.Formation, ColumnNames.BackSet, ColumnNames.BackSide, ColumnNames.Motion, ColumnNames.Tempo })
        {
            foreach (var value in CrossTab.Values(plays, column).Select(value => value.Value).Where(value => value is not ("none" or "huddle")))
            {
                yield return new Seen(Spoken(column, value), plays.Where(column, value));
            }
        }

        // Which side he is on turns with the hash and the strength: what tells is that he is there, or is not.
        foreach (var column in new[] { ColumnNames.Wing, ColumnNames.Attached })
        {
            yield return new Seen(Spoken(column, "L or R"), plays.Where(column, "L", "R", "both"));
            yield return new Seen(Spoken(column, "none"), plays.Where(column, "none"));
        }

        foreach (var formation in CrossTab.Values(plays, ColumnNames.Formation).Select(value => value.Value))
        {
            var here = plays.Where(ColumnNames.Formation, formation);
            foreach (var back in CrossTab.Values(here, ColumnNames.BackSide).Where(back => back.Count < here.Rows && back.Value != "none").Select(value => value.Value))
            {
                yield return new Seen($"{Spoken(ColumnNames.Formation, formation)}, {Spoken(ColumnNames.BackSide, back)}", here.Where(ColumnNames.BackSide, back));
            }
        }
    }

    private static IEnumerable<Seen> Held(Study study) =>
        from report in study.Tells
        where report.OutcomeColumn == ColumnNames.Call
        from tell in report.Tells
        where tell.HeldUp && tell.Difference > 0 && tell.Conditions.All(c => c.Name is ColumnNames.Formation or ColumnNames.Down or ColumnNames.DownDistance || s_seen.Contains(c.Name))
        select new Seen(string.Join(", ", tell.Conditions.Select(c => Spoken(c.Name, c.Value))), study.Plays.Take([.. tell.Rows]));

    private static Tip TipOf(Study study, Seen seen)
    {
        var (call, share) = CallOf(study, seen.Plays);
        return new Tip(Words.Capital(seen.Cue), call, share, MostOften(seen.Plays.Where(ColumnNames.Call, call), call), Keys(seen.Plays));
    }

    private static (string Call, Share Share) CallOf(Study study, PlayLog plays)
    {
        var called = plays.Where(ColumnNames.Call, "run", "pass");
        var call = CrossTab.Share(called, ColumnNames.Call, "run").Share < .5 ? "pass" : "run";
        return (call, study.Of(called, ColumnNames.Call, call, .5));
    }

    /// <summary>"most often inside zone away from the back, 14".</summary>
    private static string MostOften(PlayLog plays, string call)
    {
        const int Fewest = 3;
        const int OneIn = 4; // a call that is less than a quarter of them is no tip
        var run = call == "run";
        var scheme = CrossTab.Values(plays, run ? ColumnNames.RunScheme : ColumnNames.PassConcept).FirstOrDefault();
        if (scheme.Count < Fewest || scheme.Count * OneIn < plays.Rows)
        {
            return "";
        }

        var way = run ? CrossTab.Values(plays.Where(ColumnNames.RunScheme, scheme.Value), ColumnNames.RunTo).FirstOrDefault() : default;
        return way.Count >= Fewest && way.Count * OneIn >= plays.Rows
            ? $"most often {Words.Plain(scheme.Value)} {(way.Value == "away" ? "away from the back" : "to the back’s side")}, {way.Count}"
            : $"most often {Words.Plain(scheme.Value)}, {scheme.Count}";
    }

    private static string Spoken(string column, string value) => (column, value) switch
    {
        (ColumnNames.Formation, _) => Words.Plain(value),
        (ColumnNames.BackSide, "strong") => "back on the strong side",
        (ColumnNames.BackSide, "weak") => "back on the weak side",
        (ColumnNames.BackSide, "middle") => "back behind the quarterback",
        (ColumnNames.Tempo, "fast") => "fast tempo",
        (ColumnNames.Wing, "L or R") => "a wing",
        (ColumnNames.Wing, "L" or "R" or "both") => $"wing {SideOf(value)}",
        (ColumnNames.Attached, "L or R") => "a tight end on the line",
        (ColumnNames.Attached, "none") => "no tight end on the line",
        (ColumnNames.Attached, "L" or "R" or "both") => $"tight end {SideOf(value)}",
        _ => SituationWords.Of(column, value),
    };

    private static string SideOf(string side) => side switch { "L" => "left", "R" => "right", _ => "on both sides" };

    private static HashSet<(string Game, int? Play)> Keys(PlayLog plays)
    {
        var games = plays.Category(ColumnNames.Game);
        var numbers = plays.Number(ColumnNames.Play);
        return [.. Enumerable.Range(0, plays.Rows).Select(row => (games[row], numbers[row]))];
    }

    private static double Overlap(Tip one, Tip other) => (double)one.Plays.Count(other.Plays.Contains) / Math.Min(one.Plays.Count, other.Plays.Count);
}
