using System.Globalization;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Breakdown.Fronts.Options;
using Tendency.Input;

namespace Tendency.Output;

/// <summary>The front check as tables, and the sentence that goes with each on a terminal.</summary>
internal static class FrontTables
{
    private const string Caution = "Ratings assume equal players and correct technique: they rank questions for the staff, they do not choose the call.";

    public static (OutputTable Table, string Remark) Ranking(FrontStudy study) => (
        new(
            ["front", "success_allowed", "low", "high", "probability_best", "rank"],
            [.. study.Check.Ranking.Ranks.Select(r => (object?[])[r.Front, r.SuccessAllowed, r.Low, r.High, r.ProbabilityBest, r.Rank])]),
        $"{study.Check.Ranking.Verdict}. {Caution}");

    public static (OutputTable Table, string Remark) Matrix(FrontStudy study) => (
        new(
            ["front", "run_scheme", "side", "plays", "successes", "prior", "success_allowed", "low", "high", "ledger"],
            [
                .. study.Check.Matrix.Cells.SelectMany(row => row).Select(c => (object?[])
                    [c.Front, c.RunScheme, c.Side.Word(), c.Plays, c.Successes, c.Prior, c.SuccessAllowed, c.Low, c.High, c.Ledger]),
            ]),
        $"{study.Check.Ranking.Verdict}. {Caution}");

    public static (OutputTable Table, string Remark) BreakEven(FrontStudy study) => (
        new(
            ["front_a", "front_b", "family", "share_now", "low", "high", "break_even_share", "better_below", "better_above"],
            [
                .. study.Check.BreakEvens.Select(b => (object?[])
                    [b.FrontA, b.FrontB, b.Family, b.ShareNow, b.Low, b.High, b.BreakEvenShare, b.BetterBelow, b.BetterAbove]),
            ]),
        $"low and high are of the family's share; --turns says how sure the break-even is. {Caution}");

    /// <summary>The break-even shares there are, with what the ratings alone say and how sure they are.</summary>
    public static (OutputTable Table, string Remark) Turns(FrontStudy study) => (
        new(
            ["front_a", "front_b", "family", "share_now", "better_now", "break_even_share", "low", "high", "by_ratings", "turns", "low_if_it_turns", "high_if_it_turns"],
            [
                .. study.Check.BreakEvens.Where(b => b.BreakEvenShare is not null).Select(b => (object?[])
                [
                    b.FrontA, b.FrontB, b.Family, b.ShareNow, b.BetterNow, b.BreakEvenShare, b.IfRatesHold.Range?.Low, b.IfRatesHold.Range?.High,
                    b.ByRatings, b.InAll.Chance, b.InAll.Range?.Low, b.InAll.Range?.High,
                ]),
            ]),
        "low and high: the break-even if what each front allows is right, their mix alone uncertain. turns: in how many of the draws there is this turn when that is uncertain too.");

    public static (OutputTable Table, string Remark) Card(FrontStudy study) => (
        new(
            ["situation", "plays", "run_share", "low", "high", "top_runs", "front", "success_allowed", "probability_best", "verdict", "second", "cost", "front_on_runs", "best_on_runs"],
            [
                .. study.Card().Select(c => (object?[])
                [
                    c.Situation, c.Plays, c.RunShare, c.RunShareRange.Low, c.RunShareRange.High, string.Join(", ", c.TopRuns.Select(t => $"{t.Run} {t.Plays}")),
                    c.Front, c.SuccessAllowed, c.Sure, c.Verdict, c.Second, c.Cost, c.OnRuns, c.OnRunsSure,
                ]),
            ]),
        $"Passes count here in their share. {Caution}");

    /// <summary>Every gap with its man, for the runs they have shown from a surface that is charted.</summary>
    public static (OutputTable Table, string Remark) Ledger(FrontStudy study) => (
        new(
            ["front", "run_scheme", "side", "runs", "gap_side", "gap", "fitter", "fits"],
            [
                .. from run in Charted(study)
                   let ledger = GapLedger.Of(run.Front, run.Cell.Scheme, run.Surface, run.Cell.Tag)
                   from fit in ledger.Fits
                   select (object?[])
                   [
                       run.Front.Name, run.Cell.Scheme.Name, run.Cell.Side.Word(), run.Runs, fit.Flank == Flank.Play ? "play" : "back",
                       fit.Gap, fit.Fitter, fit.IsUncovered ? "nobody" : fit.IsLate ? "late" : "at the snap",
                   ],
            ]),
        "The ledger counts men and the rating judges angles: read both, add neither to the other.");

    /// <summary>What each shell behind a front with three high safeties changes, for the runs they have shown.</summary>
    public static (OutputTable Table, string Remark) Shells(FrontStudy study) => (
        new(
            ["front", "run_scheme", "side", "runs", "shell", "ledger"],
            [
                .. from run in Charted(study)
                   from support in ShellSupport.Of(run.Front, run.Cell.Scheme, run.Surface, run.Cell.Tag)
                   select (object?[])[support.Front, support.Run, run.Cell.Side.Word(), run.Runs, support.Shell.Word(), support.Ledger.Text],
            ]),
        "Fronts without three high safeties have one shell and are in the matrix.");

    /// <summary>How often a situation asks for one man more.</summary>
    public static (OutputTable Table, string Remark) Options(FrontStudy study) => (
        new(
            ["situation", "kind", "runs", "count", "share", "low", "high"],
            [
                .. OptionShare.Of(study.Studied.Plays, study.Check.Sample, study.Options.Level).Select(o => (object?[])
                    [o.Situation, o.Kind.Word(), o.Runs, o.Count, o.Share, o.Range.Low, o.Range.High]),
            ]),
        "read: the quarterback may keep; bash: the back goes away from the blocking; option: a pitch or a second key; rpo: a throw holds one defender.");

    /// <summary>Who has the second runner, by front and shell.</summary>
    public static (OutputTable Table, string Remark) ExtraFitter(FrontStudy study) => (
        new(
            ["front", "shell", "read_man", "extra_fitter", "fits", "ledger"],
            [
                .. OptionFitter.Of(study.Check.Matrix.Fronts, study.Plan.Book, OptionFitter.UsualSurface(study.Check.Sample)).Select(o => (object?[])
                    [o.Front, o.Shell.Word(), o.ReadMan, o.Keep, o.Keep.Length == 0 ? "nobody" : o.KeepIsLate ? "late" : "at the snap", o.Ledger.Text]),
            ]),
        "A zone read with the dive away from the back and the keep to him, from the surface they run reads from most; without one, the tight end on the dive's side.");

    /// <summary>Count and rating side by side, and the cells where they point in opposite ways.</summary>
    public static (OutputTable Table, string Remark) Agreement(FrontStudy study)
    {
        var agreement = LedgerAgreement.Of(study.Plan.Book, r => r.Basis != "rule");
        return (
            new(
                ["front", "run_scheme", "side", "rating", "play_now", "play_late", "all_late"],
                [
                    .. agreement.Partings.Select(p => (object?[])
                        [p.Rating.Front, p.Rating.Scheme, p.Rating.RunTo.Word(), (decimal)p.Rating.Value, (decimal)p.PlayNow, (decimal)p.PlayLate, (decimal)p.AllLate]),
                ]),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Rank agreement of count and rating over {agreement.Cells} cells (Kendall): {agreement.KendallNow:0.00} at the snap, {agreement.KendallLate:0.00} late; fronts ranked against one run: {agreement.WithinNow:0.00}, {agreement.WithinLate:0.00}. They part in the {agreement.Partings.Count} cells listed."));
    }

    /// <summary>Each front against each part of their mix whose surface is charted, the commonest first, with the runs charted to that side.</summary>
    private static IEnumerable<(Front Front, MixCell Cell, Surface Surface, int Runs)> Charted(FrontStudy study)
    {
        foreach (var front in study.Check.Matrix.Fronts)
        {
            foreach (var cell in study.Check.Matrix.Mix.Charted)
            {
                if (cell.Surface is { } surface)
                {
                    yield return (front, cell, surface with { RunTo = cell.Side }, study.Check.Sample.Runs.Count(r => r.Scheme == cell.Scheme && r.RunTo == cell.Side));
                }
            }
        }
    }
}
