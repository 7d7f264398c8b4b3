namespace Tendency.SampleCharts.Tired;

/// <summary>
/// The words a staff really writes: aliases and abbreviations of the trade for the chart's terms, any of them on any row.
/// They are no mistakes; a reader with a glossary reads them all.
/// </summary>
internal static class StaffWords
{
    private static readonly Dictionary<string, string[]> Formations = new(StringComparer.Ordinal)
    {
        ["doubles"] = ["2x2", "Dbls", "doubles", "Doubles"],
        ["trips"] = ["Trips {S}", "TRIPS {s}", "trips {side}", "3x1"],
        ["trips closed"] = ["Y Trips {S}", "trips closed"],
        ["nub trips"] = ["Nub {S}", "nub"],
        ["bunch"] = ["Bunch {S}", "bnch", "Bunch"],
        ["wing"] = ["Wing {S}", "TE Wing {S}", "wing {side}", "Y wing"],
        ["two tight"] = ["Double Tight", "ace tight"],
        ["i form"] = ["I", "I-form"],
        ["three tight"] = ["13 heavy"],
        ["stacked"] = ["Stk WR"],
        ["empty"] = ["MT", "Empty"],
        ["victory set"] = ["victory"],
    };

    private static readonly Dictionary<string, string[]> Words = new(StringComparer.Ordinal)
    {
        ["inside zone"] = ["IZ", "Inside Zone", "ins zone", "iz"],
        ["outside zone"] = ["OZ", "stretch", "Wide Zone"],
        ["split zone"] = ["slice", "SZ"],
        ["zone read"] = ["ZR", "zone rd"],
        ["counter gt"] = ["GT", "ctr gt", "Counter Trey"],
        ["counter gh"] = ["GH", "ctr h"],
        ["power"] = ["PWR", "Power", "power o"],
        ["jet sweep"] = ["Jet Sweep", "fly sweep"],
        ["pin pull"] = ["P&P", "Pin-Pull"],
        ["toss sweep"] = ["toss", "Crack Toss"],
        ["slant flat"] = ["dragon", "slant-flat"],
        ["four verticals"] = ["4V", "Verts"],
        ["curl flat"] = ["curl", "Curl-Flat"],
        ["shallow cross"] = ["Shallow"],
        ["deep cross"] = ["Y cross"],
        ["boot flood"] = ["Boot Flood"],
        ["slow screen"] = ["RB screen"],
        ["quick"] = ["3 step", "Quick", "Q"],
        ["intermediate"] = ["5 step", "dropback"],
        ["play action"] = ["PA", "Play Action"],
        ["half slide"] = ["HS", "Half Slide"],
        ["man pro"] = ["BOB", "Man Pro"],
        ["play action pro"] = ["PA pro"],
        ["no huddle"] = ["NH", "No Huddle"],
        ["cover 1"] = ["C1", "man free"],
        ["cover 3"] = ["C3", "Cover 3", "3"],
        ["quarters"] = ["Qtrs", "C4", "Quarters"],
        ["three high quarters"] = ["3-high 4"],
        ["tight"] = ["Tite", "Tight", "404"],
        ["double five"] = ["505"],
        ["even 2i"] = ["2i-2i"],
        ["incomplete"] = ["inc", "Incomplete"],
        ["complete"] = ["comp", "Complete"],
        ["across"] = ["Across"],
        ["none"] = ["None", "none"],
        ["strong"] = ["Strong", "strong"],
        ["weak"] = ["Weak", "weak"],
        ["run"] = ["Run", "run", "RUN"],
        ["pass"] = ["Pass", "pass", "pass "],
    };

    private static readonly HashSet<string> Columns = new(StringComparer.Ordinal)
    {
        "back_side", "motion", "tempo", "call", "run_scheme", "pass_concept", "drop", "protection", "front", "coverage", "result",
    };

    /// <summary>The cell as this charter might write it; about half of the cells stay as they are.</summary>
    public static string Write(string column, string cell, string strength, Chance chance)
    {
        if (column == "formation" && Formations.TryGetValue(cell, out var shapes) && chance.Roll(0.6))
        {
            var (word, letter) = strength == "L" ? ("Lt", "L") : ("Rt", "R");
            return chance.One<string>(shapes).Replace("{S}", word).Replace("{s}", letter).Replace("{side}", strength == "L" ? "left" : "right");
        }

        return Columns.Contains(column) && Words.TryGetValue(cell, out var words) && chance.Roll(0.5) ? chance.One<string>(words) : cell;
    }
}
