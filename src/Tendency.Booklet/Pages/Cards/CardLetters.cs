using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>What our men are called on a card, as coaches letter them (common practice, no single source).</summary>
internal static class CardLetters
{
    /// <summary>N nose, T tackle, E end, J stand-up edge or S on the strength; M, W and S linebackers; R overhang; F, OS and SS safeties.</summary>
    public static string Of(Defender man, GapLedger ledger) => man.Role switch
    {
        Role.Line => OnLine(man, ledger),
        Role.Linebacker => Linebacker(man, ledger),
        Role.Overhang => man.Name switch { "outside safety" => "OS", "corner" => "C", _ => "R" },
        _ => man.Name switch { "outside safety" => "OS", "strong safety" => "SS", _ => "F" },
    };

    /// <summary>"5 technique", "linebacker", "middle safety": what stands beside the letter in the ledger.</summary>
    public static string Place(Defender man) => man.Role switch
    {
        Role.Line when man.Technique is "edge" or "backer" => "on the edge",
        Role.Line when man.Technique == "0" => "nose",
        Role.Line when man.Technique == "1" => "shade",
        Role.Line => $"{man.Technique} technique",
        Role.Linebacker when man.Name.EndsWith("linebacker", StringComparison.Ordinal) => "linebacker",
        _ => Words.Plain(man.Name),
    };

    /// <summary>The number small beside the letter; empty for men off the line and stand-up edges.</summary>
    public static string Technique(Defender man) => man.Technique is "edge" or "backer" ? "" : man.Technique;

    private static string OnLine(Defender man, GapLedger ledger)
    {
        if (man.Technique is "0" or "1")
        {
            return "N";
        }

        if (man.Technique is "edge" or "backer")
        {
            return man.Flank == ledger.Surface.Strength ? "S" : "J";
        }

        var side = ledger.SetTo == man.Flank ? ledger.Front.LineTo : ledger.Front.LineOff;
        var outside = side.SkipWhile(technique => technique != man.Technique).Skip(1).ToArray();
        var ends = outside.All(technique => technique is "edge" or "backer") && (outside.Length == 0 || man.Technique is "5" or "6" or "7" or "9");
        return ends ? "E" : "T";
    }

    private static string Linebacker(Defender man, GapLedger ledger)
    {
        var strong = ledger.Surface.Strength == Flank.Play ? Stand.Play : Stand.Back;
        return man.Name.EndsWith("safety", StringComparison.Ordinal) ? "F"
            : man.Stand == Stand.Middle ? "M"
            : man.Stand != strong ? "W"
            : ledger.Front.Linebackers > 2 ? "S" : "M";
    }
}
