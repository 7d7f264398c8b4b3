using System.Diagnostics;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.SampleCharts.Hostile;

namespace Tendency.Simulations.Studies;

/// <summary>Reads and audits hostile files by the thousand: none may throw, hang, or leave a row unaccounted for.</summary>
internal static class FuzzStudy
{
    private const int SlowMilliseconds = 5_000;

    /// <returns>The exit code: 0 when all held.</returns>
    public static int Run(int files, int seed, TextWriter output)
    {
        var (failed, rows, plays, slowest, worst) = (0, 0L, 0L, 0L, "");
        for (var n = 0; n < files; n++)
        {
            var (name, bytes) = HostileFiles.Next(new Random(seed + n));
            var watch = Stopwatch.StartNew();
            try
            {
                var read = ChartReader.Read([new ChartSource(name, () => new MemoryStream(bytes))], WeekPlan.Default, Glossary.BuiltIn);
                var log = DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn);
                _ = Audit.Run(read, log, WeekPlan.Default, Glossary.BuiltIn);
                (rows, plays) = (rows + read.RowsRead, plays + read.Plays.Rows);
                if (read.RowsRead != read.Plays.Rows + read.RowsLeftOut + read.RowsSetAside)
                {
                    failed++;
                    output.WriteLine($"seed {seed + n} {name}: rows do not reconcile");
                }
            }
            catch (Exception crash) when (crash is not OutOfMemoryException)
            {
                failed++;
                output.WriteLine($"seed {seed + n} {name}: {crash}");
            }

            if (watch.ElapsedMilliseconds > slowest)
            {
                (slowest, worst) = (watch.ElapsedMilliseconds, $"seed {seed + n} {name} {bytes.Length} bytes");
            }

            if (watch.ElapsedMilliseconds > SlowMilliseconds)
            {
                failed++;
                output.WriteLine($"seed {seed + n} {name}: {watch.ElapsedMilliseconds} ms");
            }
        }

        output.WriteLine($"{files} files from seed {seed}: {failed} failed; {rows} rows read, {plays} plays; slowest {slowest} ms ({worst})");
        output.WriteLine($"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1024 / 1024} MB");
        return failed == 0 ? 0 : 1;
    }
}
