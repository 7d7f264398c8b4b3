using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.RowRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about call, people and shape of a row.</summary>
internal static class CallChecks
{
    public static IEnumerable<Problem> Run(AuditedCharts charts)
    {
        var usual = Usual.Of(charts);
        return Enumerable.Range(0, charts.Log.Rows).SelectMany(row => CallsOf(charts, row, usual).Concat(ShapeOf(charts, row, usual)))
            .Concat(charts.Games.SelectMany(game => UnresolvedSides(charts, game)));
    }

    // Said once a game: where strength is not charted, no row can be resolved.
    private static IEnumerable<Problem> UnresolvedSides(AuditedCharts charts, AuditedGame game)
    {
        var column = ColumnCatalogue.Find(BackSide)!;
        var rows = game.Rows.Where(row => charts.Log.Category(Strength).Codes[row] == 0
            && charts.Raw(row, BackSide) is { Length: > 0 } written && CellReader.TryChoice(column, written, out var side) && side is "L" or "R").ToArray();
        if (rows.Length > 0)
        {
            yield return charts.Whole(ReadingRules.UnresolvedSide, rows[0], BackSide,
                $"{game.Name}: back_side is left or right on {rows.Length} {(rows.Length == 1 ? "row" : "rows")} without strength; it counts as neither strong nor weak.");
        }
    }

    private static IEnumerable<Problem> CallsOf(AuditedCharts charts, int row, Usual usual)
    {
        var log = charts.Log;
        string At(string column) => log.Category(column)[row];
        var (call, result) = (charts.Calls[row], At(Result));
        var run = (string[])[.. new[] { RunScheme, RunSide, Gap }.Where(column => At(column).Length > 0)];
        var pass = (string[])[.. new[] { PassConcept, Drop, Protection }.Where(column => At(column).Length > 0)];
        var passResult = result is "complete" or "incomplete" or "interception" or "sack";
        if ((call == "run" && passResult) || (call == "pass" && result == "rush"))
        {
            var ran = run.Length > pass.Length;
            var (column, value) = (call == "run") == ran ? (Result, ran ? "rush" : "") : (Call, ran ? "run" : "pass");
            yield return charts.Cell(CallAgainstResult, row, column, $"call is {call}, result is {result}{(value.Length > 0 ? $"; the row is charted like a {(ran ? "run" : "pass")}" : "")}.", value);
            yield break;
        }

        if (call == "run" && result == "scramble")
        {
            yield return charts.Cell(ScrambleAsRun, row, Call, "a scramble was a pass call.", "pass");
        }
        else if (call == "pass" && run.Length > 0 && pass.Length == 0)
        {
            yield return charts.Cell(PassWithRun, row, Call, $"charted as a pass, but {string.Join(", ", run)} is filled and no pass column.", result.Length == 0 ? "run" : "");
        }
        else if (call == "pass" && run.Length > 0)
        {
            yield return run is [var only] && only != RunScheme
                ? charts.Cell(PassWithRun, row, only, $"charted as a pass, but {only} is filled.")
                : charts.Cell(PassWithRun, row, Call, $"charted as a pass, but {string.Join(", ", run)} is filled too.", "rpo");
        }
        else if (call == "run" && pass.Length > 0)
        {
            yield return run.Length > 0 && At(PassConcept).Length > 0 ? charts.Cell(RunWithPass, row, Call, "charted as a run, but a run and a pass are filled.", "rpo")
                : run.Length > 0 ? charts.Cell(RunWithPass, row, pass[0], $"charted as a run, but {pass[0]} is filled.")
                : charts.Cell(RunWithPass, row, Call, $"charted as a run, but {string.Join(", ", pass)} is filled and no run column.", result is "" or "scramble" ? "pass" : "");
        }
        else if (call == "rpo" && At(RunScheme).Length == 0 && usual.OptionsHaveSchemes)
        {
            yield return charts.Cell(OptionWithoutRun, row, RunScheme, "a run-pass option without its run scheme.");
        }
        else if (call == "none" && result is not ("" or "penalty") && (At(RunScheme).Length > 0 || At(PassConcept).Length > 0))
        {
            yield return charts.Cell(NoPlayWithCall, row, Call, $"call is none, but {(At(RunScheme).Length > 0 ? RunScheme : PassConcept)} is filled.", At(RunScheme).Length > 0 ? "run" : "pass");
        }

        if (call == "run" && At(RunScheme).Length == 0 && pass.Length == 0 && LooksLikeKneel(log, row))
        {
            yield return charts.Cell(Kneel, row, Call, "looks like a kneel charted as a run.", "none");
        }
        else if (call == "run" && result is "rush" && pass.Length == 0)
        {
            if (At(RunScheme).Length == 0 && usual.RunsHaveSchemes.Contains(At(Game)))
            {
                yield return charts.Cell(RunWithoutScheme, row, RunScheme, "a run without a scheme.");
            }

            if (At(RunSide).Length == 0 && charts.Raw(row, RunSide).Length == 0 && usual.RunsHaveSides.Contains(At(Game)) && At(RunScheme) is not ("sneak" or "wedge" or "unknown run"))
            {
                yield return charts.Cell(RunWithoutSide, row, RunSide, "a run without a side.");
            }
        }

        if (At(Read) == "none" && At(RunScheme) is "zone read" or "power read" or "inside veer" or "midline" or "triple option" or "bash" && usual.ReadsAreCharted)
        {
            yield return charts.Cell(ReadWithoutMan, row, Read, $"{At(RunScheme)} with read none.", At(RunScheme) == "bash" ? "bash" : "read");
        }

        if (At(Offense).Length > 0 && At(Offense) == At(Defense))
        {
            yield return charts.Cell(NoOpponent, row, Defense, $"{At(Offense)} has the ball and defends.");
        }
    }

    private static IEnumerable<Problem> ShapeOf(AuditedCharts charts, int row, Usual usual)
    {
        var log = charts.Log;
        string At(string column) => log.Category(column)[row];
        var (people, attached, set, side) = (At(Personnel), At(Attached), At(BackSet), At(BackSide));
        var sides = attached switch { "both" => 2, "L" or "R" => 1, _ => 0 };
        if (people.Length == 2 && sides > people[1] - '0')
        {
            var (column, value) = usual.Likelier(log, row);
            yield return charts.Cell(AttachedWithoutTightEnd, row, column, $"attached is {attached}, but {people} has {(people[1] == '0' ? "no tight end" : "one tight end")}.", value);
        }

        if (set == "empty" && side.Length > 0 && side != "none")
        {
            // The formation tells which of the two is the slip.
            var empty = charts.Glossary.FormationFamily(At(Formation)).StartsWith("empty", StringComparison.Ordinal);
            yield return empty
                ? charts.Cell(BackAndSet, row, BackSide, $"back_set is empty, but the back stands {side}.", "none")
                : charts.Cell(BackAndSet, row, BackSet, $"back_set is empty, but the back stands {side}.", usual.SetOf(log, row));
        }
        else if (side == "none" && set is "gun" or "pistol" or "under" && !usual.NoneInSets)
        {
            yield return charts.Cell(BackAndSet, row, BackSide, $"back_side is none in {set}.", set is "pistol" or "under" ? "middle" : "");
        }
        else if (set == "pistol" && side is "strong" or "weak" && usual.PistolIsBehind)
        {
            yield return charts.Cell(PistolSide, row, BackSide, $"back_set is pistol, but the back stands {side}.", "middle");
        }
        else if (side.Length > 0 && side != "none" && set != "empty" && charts.Glossary.FormationFamily(At(Formation)).StartsWith("empty", StringComparison.Ordinal) && usual.EmptyHasNoBack)
        {
            yield return charts.Cell(EmptyWord, row, Formation, $"{At(Formation)} has no back, but back_side is {side}.");
        }

        var written = charts.Raw(row, Strength);
        var word = FormationWord.Of(charts.Raw(row, Formation)).Strength;
        if (written.Length > 0 && word.Length > 0 && At(Strength).Length > 0 && At(Strength) != word)
        {
            yield return charts.Cell(StrengthAgainstWord, row, Strength, $"the formation is '{charts.Raw(row, Formation)}', but strength is {At(Strength)}.", word);
        }
    }

    private static bool LooksLikeKneel(PlayLog log, int row) =>
        log.Number(Gain)[row] is <= -1 and >= -3 && log.Number(Quarter)[row] is 2 or 4 && log.Number(Clock)[row] <= 120
        && (log.Number(Quarter)[row] == 2 || (log.Number(Margin)[row] ?? 0) >= 0);
}
