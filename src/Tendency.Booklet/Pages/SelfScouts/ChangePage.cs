using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.SelfScouts;

namespace Tendency.Booklet.Pages.SelfScouts;

/// <summary>What should a head coach change by Thursday?</summary>
internal static class ChangePage
{
    private const int Most = 5;

    public static Page Compose(Study study, SelfScoutReport report)
    {
        var chosen = report.Tells.Where(tell => tell.History.IsSeen).Take(Most).ToArray();
        return new Page("change", "What to change", $"{study.Opponent} {study.Side}")
        {
            Kind = PageKind.Brief,
            Blocks =
            [
                Paragraph.Lead(Sum(report)),
                .. chosen.Length == 0 ? [] : (Block[])[new EvidenceList("What gives us away, dearest first", [.. chosen.Select(tell => Of(study, tell))])],
                new Heading("What is counted"),
                Paragraph.Note(
                    "Dearest: snaps a game, times how far the share to expect (few plays lean on wider looks) lies from our usual rate, money downs double. Hidden: its range holds our usual rate and no search lists it, "
                    + "the new snaps counted in. On film: the last four games. Do not alternate for its own sake."),
            ],
        };
    }

    private static RichText Sum(SelfScoutReport report)
    {
        var seen = report.Tells.Count(tell => tell.History.IsSeen);
        var keep = report.Tells.Count(tell => tell.Advice == Advice.Keep);
        return seen == 0
            ? RichText.Strong("Nothing on film gives us away.") + $" {Figures.Count(report.Searched)} situations were looked at."
            : RichText.Strong($"{Words.Capital(Words.Counted(seen, "tell"))} on film.")
                + $" {(keep == 0 ? "None wins" : keep == 1 ? "One wins" : $"{Words.Capital(Words.Number(keep))} win")} well enough to be kept. {Figures.Count(report.Searched)} situations were looked at.";
    }

    private static Evidence Of(Study study, SelfTell tell)
    {
        var look = tell.Tell.Conditions.Count == 0 ? $"On all {tell.Question.Among}" : SituationWords.Of(tell.Tell.Conditions);
        return new Evidence(
            $"{look}: {Words.Plain(SituationWords.Outcome(tell.Question.Outcome, tell.Tell.Outcome))}.",
            study.Of(tell.Plays, tell.Question.Outcome, tell.Tell.Outcome, tell.Tell.BaseShare),
            tell.Question.Among,
            tell.IsHabit ? "even split" : "our usual rate",
            RichText.Strong(SelfTellSentence.BreakInShort(tell)) + $" {SelfTellSentence.PriceInShort(tell)} Counter: {tell.Counter}.")
        {
            Plays = study.ListOf(tell.Plays),
        };
    }
}
