using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>One slip is reported once: what follows from another finding is left out.</summary>
internal static class Suppressed
{
    public static IEnumerable<Problem> Without(IEnumerable<Problem> problems)
    {
        var all = problems.ToArray();

        // Rows of a pasted game or block fail in every way; the paste is what is wrong.
        var pasted = all.Where(p => p.Rule == GameRules.BlockPastedTwice || p.Rule == GameRules.GamePastedTwice).SelectMany(p => new[] { -1, 0, 1 }.Select(off => (p.Place.File, p.Place.Line + off))).ToHashSet();
        var twice = all.Where(p => p.Rule == PairRules.SamePlayNumber || p.Rule == DriveRules.DuplicateSnap).GroupBy(p => (p.Place.File, p.Place.Line)).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet();
        var quarters = all.Where(p => p.Rule == PairRules.QuarterFalls).Select(p => (p.Place.File, p.Place.Line)).ToHashSet();
        var cells = new HashSet<(string, int, string)>();
        foreach (var problem in all)
        {
            var here = (problem.Place.File, problem.Place.Line);
            var isPaste = problem.Rule == GameRules.BlockPastedTwice || problem.Rule == GameRules.GamePastedTwice;
            if (!isPaste && problem.Rule.Code[0] is 'D' or 'P' && pasted.Contains(here))
            {
                continue;
            }

            // In the wrong quarter no clock fits.
            if ((problem.Rule == PairRules.SamePlayNumber && twice.Contains(here)) || (problem.Rule == PairRules.ClockRises && quarters.Contains(here)))
            {
                continue;
            }

            // The first finding about a cell names its fix; a second about the same cell would only repeat it.
            if (problem.Place.Line > 0 && problem.Rule.Code[0] is 'D' or 'R' or 'P' && problem.Place.Column.Length > 0 && !cells.Add((here.File, here.Line, problem.Place.Column)))
            {
                continue;
            }

            yield return problem;
        }
    }
}
