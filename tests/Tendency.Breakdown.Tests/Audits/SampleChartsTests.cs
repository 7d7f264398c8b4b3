using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Problems;
using Tendency.Tests.Shared;
using Xunit.Abstractions;

namespace Tendency.Breakdown.Tests.Audits;

/// <summary>The audit against the sample charts, whose mistakes were written down by the program that made them.</summary>
public class SampleChartsTests(ITestOutputHelper output)
{
    private static readonly string s_logs = Checkout.SampleLogs();

    [Theory]
    [InlineData("port-halden")]
    [InlineData("our-team/offense")]
    [InlineData("our-team/defense")]
    public void Run_CorrectCharts_IsQuiet(string folder) => Assert.Empty(Audit(folder).Problems.Where(problem => problem.Rule.Severity != Severity.Note));

    // The bounds are those the audit is asked to keep: 95 % on the right row, 85 % with cell and value, one false alarm in 200 snaps.
    [Fact]
    public void Run_TiredCharts_FindsWhatWasPlanted()
    {
        var report = Audit("port-halden-tired");
        var planted = File.ReadAllLines(Path.Combine(s_logs, "planted", "port-halden-tired.csv")).Skip(1).Where(line => line.Length > 0).Select(line => line.Split(',')).ToArray();
        var alarms = report.Problems.Where(problem => problem.Rule.Severity != Severity.Note).ToArray();
        var (row, cell) = (0, 0);
        foreach (var mistake in planted)
        {
            var line = int.TryParse(mistake[1], out var number) ? number : 0;
            var here = report.Problems.Where(problem => problem.Place.File == mistake[0] && problem.Place.Line == line).ToArray();
            var right = here.Any(problem => (mistake[2].Length == 0 || problem.Place.Column == mistake[2]) && (problem.Suggestion == mistake[4] || mistake[4].Length == 0));
            row += here.Length > 0 ? 1 : 0;
            cell += right ? 1 : 0;
            if (!right)
            {
                output.WriteLine($"{string.Join(',', mistake)} -> {string.Join(" / ", here.Select(p => $"{p.Rule.Code} {p.Place.Column} => {p.Suggestion}"))}");
            }
        }

        foreach (var alarm in alarms.Where(alarm => !planted.Any(mistake => mistake[0] == alarm.Place.File && int.TryParse(mistake[1], out var line) && Math.Abs(line - alarm.Place.Line) <= 1)))
        {
            output.WriteLine($"alarm {alarm.Rule.Code} {alarm.Place} {alarm.Message} => {alarm.Suggestion}");
        }

        output.WriteLine($"{planted.Length} planted, {row} on the row, {cell} with the value");
        Assert.True(row >= 0.95 * planted.Length, $"{row} of {planted.Length} on the right row");
        Assert.True(cell >= 0.85 * planted.Length, $"{cell} of {planted.Length} with cell and value");
    }

    private static AuditReport Audit(string folder) =>
        AuditedText.RunFiles(Directory.EnumerateFiles(Path.Combine(s_logs, folder), "*.csv").Order(StringComparer.Ordinal));
}
