using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>How a front stands against a run at the point of attack, the worst first.</summary>
internal enum CardStanding
{
    Open,
    Late,
    NobodyFree,
    SafetyFree,
    ManFree,
}

/// <summary>What a ledger comes to, in the words of a headline.</summary>
internal static class CardVerdict
{
    public static CardStanding Standing(GapLedger ledger) =>
        At(ledger, fit => fit.IsUncovered) is not null ? CardStanding.Open
        : At(ledger, fit => fit.IsLate) is not null ? CardStanding.Late
        : ledger.Play.SpareNow > 0 ? CardStanding.ManFree
        : ledger.Play.SpareLate > 0 ? CardStanding.SafetyFree
        : CardStanding.NobodyFree;

    /// <summary>"Every gap to the play has a man at the snap. On the backside A/B waits for OS."</summary>
    public static string Of(GapLedger ledger)
    {
        var open = At(ledger, fit => fit.IsUncovered);
        var late = At(ledger, fit => fit.IsLate);
        var play = Standing(ledger) switch
        {
            CardStanding.Open => $"Nobody has {Named(open!)}{(late is null ? "" : $", and {Named(late)} waits for {CardLetters.Of(late.Man!, ledger)}")}.",
            CardStanding.Late => $"{Words.Capital(Named(late!))} waits for {CardLetters.Of(late!.Man!, ledger)}.",
            CardStanding.ManFree => "Every gap to the play has a man at the snap, and one is free.",
            CardStanding.SafetyFree => "Every gap to the play has a man at the snap; the safety comes free.",
            _ => "Every gap to the play has a man, nobody is free.",
        };
        var backside = ledger.Fits.Where(fit => fit.Flank == Flank.Back && (fit.IsUncovered || fit.IsLate)).ToArray();
        return backside.Length == 0 ? play
            : backside.FirstOrDefault(fit => fit.IsUncovered) is { } gap ? $"{play} On the backside nobody has {Named(gap)}."
            : $"{play} On the backside {Named(backside[0])} waits for {CardLetters.Of(backside[0].Man!, ledger)}.";
    }

    /// <summary>The front against all its runs, the worst first: "Tight leaves the C gap inside the puller to a late safety against power."</summary>
    public static string Headline(IReadOnlyList<GapLedger> ledgers)
    {
        var groups = ledgers.GroupBy(Standing).OrderBy(group => group.Key).ToArray();
        var sentences = groups.Select((group, i) => $"{(i == 0 ? Words.Title(ledgers[0].Front.Name) : "It")} {Says(group.Key, [.. group])}.").ToArray();
        var bare = ledgers.Where(ledger => ledger.Fits.Any(fit => fit.Flank == Flank.Back && fit.IsUncovered)).Select(ledger => Words.Plain(ledger.Scheme.Name)).ToArray();
        var backside = bare.Length == 0 ? "" : $"Its backside is short against {(bare.Length > 1 && bare.Length == ledgers.Count ? Every(bare.Length) : Words.Join(bare))}.";
        return Wording.Headline.Of([sentences[0], backside, .. sentences.Skip(1)]);

        static string Every(int runs) => runs == 2 ? "both" : $"all {Words.Number(runs)}";
    }

    /// <summary>"C between the wrap and the kick-out", "the quarterback".</summary>
    public static string Named(GapFit fit) => fit.Place.IsAdded
        ? fit.Gap switch { "keep" => "the quarterback", "pitch" => "the pitch", "back's path" => "the back", _ => $"the {fit.Gap}" }
        : fit.Gap;

    /// <summary>The gap as the ledger's first column has room for it: "C inside puller", "C, wrap to kick-out".</summary>
    public static string Short(GapFit fit)
    {
        var words = fit.Gap.Replace(" the ", " ", StringComparison.Ordinal);
        return Words.Capital(words.Contains(" between ", StringComparison.Ordinal)
            ? words.Replace(" between ", ", ", StringComparison.Ordinal).Replace(" and ", " to ", StringComparison.Ordinal)
            : words);
    }

    private static GapFit? At(GapLedger ledger, Func<GapFit, bool> holds) => ledger.Fits.FirstOrDefault(fit => fit.Flank == Flank.Play && holds(fit));

    private static string Says(CardStanding standing, GapLedger[] ledgers)
    {
        var runs = Words.Join(ledgers.Select(ledger => Words.Plain(ledger.Scheme.Name)));
        string Gap(Func<GapFit, bool> holds) => ledgers.Length > 1 ? "a gap" : At(ledgers[0], holds) is { } fit ? $"the {(fit.Place.IsAdded ? fit.Gap : fit.Gap.Split(' ')[0] + " gap")}" : "a gap";
        return standing switch
        {
            CardStanding.Open => $"leaves {Gap(fit => fit.IsUncovered)} open against {runs}",
            CardStanding.Late => $"leaves {Gap(fit => fit.IsLate)} to a late safety against {runs}",
            CardStanding.ManFree => $"has a man to spare against {runs}",
            CardStanding.SafetyFree => $"fits {runs} with a safety free",
            _ => $"fits {runs} with nobody free",
        };
    }
}
