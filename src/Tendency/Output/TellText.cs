using System.Globalization;
using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;

namespace Tendency.Output;

/// <summary>A list of tells as a coach would read it out.</summary>
internal static class TellText
{
    /// <summary>Play numbers shown; csv and json have them all.</summary>
    private const int MostPlays = 12;

    /// <param name="plays">The log that was searched.</param>
    public static string Of(TellReport report, PlayLog plays, SearchedAnew? anew, int seed)
    {
        var text = new StringBuilder();
        foreach (var tell in report.Tells)
        {
            string[] beside =
            [
                TellSentence.Otherwise(tell, report.OutcomeColumn), TellSentence.Parent(tell), TellSentence.Caution(tell), DriftText.Of(plays, tell, report.OutcomeColumn, seed),
            ];
            _ = text.Append(CultureInfo.InvariantCulture, $"{tell.Rank,3}  {TellSentence.Of(tell, report.OutcomeColumn)}\n")
                .Append(CultureInfo.InvariantCulture, $"     {string.Join("; ", beside.Where(words => words.Length > 0))}\n")
                .Append(CultureInfo.InvariantCulture, $"     {TellSentence.Plays(tell, MostPlays)}\n");
        }

        return text.Append(report.Tells.Count == 0 ? $"{NoTell(report)}\n" : "")
            .Append(anew is null ? "" : $"{Honest(anew)}\n")
            .Append($"{report.Searched} pairs of situation and outcome searched on {report.Plays} plays of {report.Games} {(report.Games == 1 ? "game" : "games")}{(report.Tells.Count == 0 ? "" : $"; about {Percent.Of(report.Fdr)} of those listed may be false alarms")}. Tendencies are odds, not promises.\n")
            .ToString();
    }

    private static string Honest(SearchedAnew anew) =>
        $"Searched anew without each game in turn: what was listed then came {Percent.Of((double)anew.Count / anew.Plays)} of the time in the game left out "
        + $"({anew.Count} of {anew.Plays}), {Percent.Of(anew.ShareFound)} where it was found, {Percent.Of(anew.UsualShare)} as usual.";

    // "No tell" is a finding only where there was something to search.
    private static string NoTell(TellReport report) =>
        report.Plays == 0 ? $"Nothing was searched: no play has {report.OutcomeColumn} charted."
        : report.Games == 1 ? "Nothing was searched: a tell must show in two games."
        : report.Searched == 0 ? $"Nothing was searched: no situation has enough plays, or {report.OutcomeColumn} is always the same."
        : "No tell holds up.";
}
