using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>How a man gets to his gap, and who is behind him, by the ledger's own rules.</summary>
internal static class FitWords
{
    public static string How(GapFit fit, GapLedger ledger) => fit.Man switch
    {
        null => "nobody, even late",
        { Role: Role.Overhang } => fit.Place.IsAdded ? "has the runner outside" : "forces, turns the ball in",
        { Role: Role.Linebacker } man => Linebacker(fit, man, ledger),
        { Role: Role.Safety } => fit.Place.IsAdded ? "from depth to the runner" : fit.Flank == Flank.Back ? "from depth, the cutback" : "from depth",
        { Technique: "0" } => fit.Flank == Flank.Back ? "lags, away from the play" : "goes with the play",
        _ => OnLine(fit, fit.Man!, ledger),
    };

    /// <summary>Who can take his gap when he is late: a free man of his side, one at the snap before one from depth.</summary>
    public static string IfLate(GapFit fit, GapLedger ledger)
    {
        if (fit.IsUncovered)
        {
            return "";
        }

        var free = ledger.Free.Where(man => man.Flank == fit.Flank).OrderBy(man => ledger.Late.Contains(man) ? 1 : 0).FirstOrDefault();
        return free is null ? "nobody"
            : $"{CardLetters.Of(free, ledger)}{(ledger.Late.Contains(free) ? ", late" : ", free")}";
    }

    private static string Linebacker(GapFit fit, Defender man, GapLedger ledger) =>
        fit.Place.IsAdded ? "scrapes to the runner"
        : man.Stand == Stand.Back && fit.Flank == Flank.Back ? "stays for the cutback"
        : man.Stand == Stand.Back && ledger.Scheme.FromBack > 0 ? "follows the puller"
        : man.Stand == Stand.Back ? "fills behind the flow"
        : "fast to the play";

    private static string OnLine(GapFit fit, Defender man, GapLedger ledger)
    {
        var kicked = ledger.Moves.Any(move => move.To == fit.Flank && move.KicksOut);
        var heavy = man.Technique is "5" && fit.Place.From < 2;
        return fit.Place.IsAdded ? "has the runner outside"
            : heavy ? "heavy: inside on a base block"
            : fit.Place is { Parts: > 1 } place && place.Part == place.Parts - 1 && kicked ? "squeezes the kick-out"
            : ledger.Scheme.Line == LineBlocks.Down && fit.Flank == Flank.Play && man.Technique is not ("edge" or "backer" or "9") ? "squeezes the down block"
            : fit.Flank == Flank.Back && fit.Place.To > fit.Place.From ? "runs through the open gap"
            : man.Technique is "edge" or "backer" or "9" or "5" or "7" ? "sets the edge"
            : "holds his gap";
    }
}
