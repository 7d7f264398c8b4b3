namespace Tendency.SampleCharts.Tired;

/// <summary>
/// What is wrong with a whole game beyond single cells. Before works on rows as filmed, After on rows in the staff's words.
/// The rest says how the file is written.
/// </summary>
internal sealed record Trouble(
    char Delimiter, bool Windows1252, bool Crlf, string? Title, int? HeaderAgainAfter, bool Total, string? LeftOutColumn,
    Action<List<TiredRow>, Chance> Before, Action<List<TiredRow>, Chance> After)
{
    public static Trouble None { get; } = new(',', false, false, null, null, false, null, Nothing, Nothing);

    /// <summary>One trouble a game, in order of games.</summary>
    public static IReadOnlyList<Trouble> Of { get; } =
    [
        new(',', false, false, null, null, false, null, Nothing, TwiceTyped),
        new(';', false, false, null, HeaderAgainAfter: 36, false, null, Nothing, QuotedLines),
        new(',', Windows1252: true, false, null, null, false, "clip", MissedSnap, Accents),
        new(',', false, Crlf: true, null, null, false, null, Mirrored, Nothing),
        new(',', false, false, "Port Halden at Quarrick - charted late, check spots", null, Total: true, null, Nothing, GaveUpOnCoverage),
    ];

    private static void Nothing(List<TiredRow> rows, Chance chance)
    {
    }

    /// <summary>One row pasted twice with its number, one charted twice under two numbers.</summary>
    private static void TwiceTyped(List<TiredRow> rows, Chance chance)
    {
        var pasted = CleanRow(rows, 20);
        var copy = rows[pasted].Copy();
        copy.Slips.Add(new Slip("", "", "row pasted twice"));
        rows.Insert(pasted + 1, copy);

        var again = CleanRow(rows, 50);
        var second = rows[again].Copy();
        second.Slips.Add(new Slip("", "", "the same snap charted twice, numbers moved on"));
        rows.Insert(again + 1, second);
        for (var i = again + 1; i < rows.Count; i++)
        {
            rows[i]["play"] = (int.Parse(rows[i]["play"]) + 1).ToString();
        }
    }

    private static void QuotedLines(List<TiredRow> rows, Chance chance)
    {
        var at = CleanRow(rows, 12);
        rows[at]["note"] = "back late to line up;\nlooked at the sideline";
    }

    /// <summary>One snap in the middle of a series never charted, the numbers closed up over it.</summary>
    private static void MissedSnap(List<TiredRow> rows, Chance chance)
    {
        var at = 30;
        while (!InsideSeries(rows, at) || rows[at].Film("gain") is "" or "0")
        {
            at++;
        }

        rows[at + 1].Slips.Add(new Slip("", "", $"a snap is missing above ({rows[at].Film("down")} and {rows[at].Film("distance")} at {rows[at].Film("ball_on")}, gain {rows[at].Film("gain")})"));
        rows.RemoveAt(at);
        for (var i = at; i < rows.Count; i++)
        {
            rows[i]["play"] = (int.Parse(rows[i].Film("play")) - 1).ToString();
        }
    }

    private static bool InsideSeries(List<TiredRow> rows, int at) =>
        at + 2 < rows.Count && rows[at - 1].Film("series") == rows[at].Film("series") && rows[at + 2].Film("series") == rows[at].Film("series");

    private static void Accents(List<TiredRow> rows, Chance chance)
    {
        rows[CleanRow(rows, 8)]["note"] = "d\u00e9j\u00e0 vu \u2013 same as first series";
        rows[CleanRow(rows, 40)]["note"] = "their caf\u00e9 band was loud";
    }

    /// <summary>The camera stood behind the defense: every side but the hash (taken from the coach's film) is mirrored all game.</summary>
    private static void Mirrored(List<TiredRow> rows, Chance chance)
    {
        rows[0].Slips.Add(new Slip("", "", "in the whole file every side but the hash is mirrored"));
        string[] sides = ["strength", "attached", "wing", "run_side", "slide_side", "pressure_side"];
        foreach (var row in rows)
        {
            foreach (var side in sides)
            {
                row[side] = row.Film(side) switch { "L" => "R", "R" => "L", var other => other };
            }
        }
    }

    /// <summary>From the fortieth row on nobody charts the coverage; one row carries the game's name misspelt.</summary>
    private static void GaveUpOnCoverage(List<TiredRow> rows, Chance chance)
    {
        foreach (var row in rows.Skip(40))
        {
            row["coverage"] = "";
            row.Slips.RemoveAll(slip => slip.Column == "coverage");
        }

        rows[40].Slips.Add(new Slip("", "", "coverage is no longer charted from here on"));
        rows[CleanRow(rows, 25)].Spoil("game", "Quarick", "typo in the game's name");
    }

    /// <summary>The first row from here on with nothing wrong on it or beside it.</summary>
    private static int CleanRow(List<TiredRow> rows, int from)
    {
        while (rows[from - 1].Slips.Count + rows[from].Slips.Count + rows[from + 1].Slips.Count > 0)
        {
            from++;
        }

        return from;
    }
}
