using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>The man an option reads.</summary>
internal static class CardRead
{
    /// <summary>The last man on the line on the side the scheme names, an overhang where nobody stands there; null when nobody is read.</summary>
    public static Defender? Man(GapLedger ledger)
    {
        var read = ledger.Scheme.ReadMan is "none" or "" && ledger.Tag == Tag.Read ? "backside end" : ledger.Scheme.ReadMan;
        var men = ledger.Fits.Select(fit => fit.Man).OfType<Defender>().Concat(ledger.Free).Where(man => man.Stand != Stand.Middle).ToArray();
        return read switch
        {
            "backside end" or "end on the back's path" => Last(men, Stand.Back),
            "playside end" or "end then overhang" => Last(men, Stand.Play),
            "interior lineman" => men.Where(man => man.Role == Role.Line && man.Stand == Stand.Play).MinBy(man => Order(man)),
            "overhang" => men.FirstOrDefault(man => man.Role == Role.Overhang && man.Stand == Stand.Back),
            _ => null,
        };
    }

    private static Defender? Last(Defender[] men, Stand side) =>
        men.Where(man => man.Role == Role.Line && man.Stand == side).MaxBy(Order) is { } end && Order(end) >= 5 ? end
        : men.FirstOrDefault(man => man.Role == Role.Overhang && man.Stand == side) ?? men.Where(man => man.Role == Role.Line && man.Stand == side).MaxBy(Order);

    /// <summary>How far out a technique stands: its number, stand-up edges beyond all.</summary>
    private static int Order(Defender man) => int.TryParse(man.Technique.TrimEnd('i'), out var number) ? number : 10;
}
