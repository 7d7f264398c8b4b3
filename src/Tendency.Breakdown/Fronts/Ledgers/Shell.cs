namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>What three high safeties do at the snap; it decides who helps on the run and when.</summary>
public enum Shell
{
    /// <summary>Outside safeties read the second receiver, the middle safety is the free fitter.</summary>
    TwoDeep,

    /// <summary>One outside safety drops down as an overhang at once, the middle safety takes the post.</summary>
    Invert,

    /// <summary>The corner forces, the outside safety is late behind him, the middle safety runs with the deep middle.</summary>
    Cloud,

    /// <summary>The middle safety is a linebacker at once, the outside safeties stay deep.</summary>
    Buzz,

    /// <summary>The overhang has a man; the middle safety is the hole player and can add.</summary>
    ManFree,
}

public static class ShellWords
{
    public static string Word(this Shell shell) => shell switch
    {
        Shell.TwoDeep => "two-deep",
        Shell.Invert => "invert",
        Shell.Cloud => "cloud",
        Shell.Buzz => "buzz",
        _ => "man free",
    };
}
