using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Tests.Charts;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Audits;

/// <summary>Audits charts given as text or as files of sample-logs.</summary>
internal static class AuditedText
{
    public static AuditReport Run(string csv)
    {
        var read = ChartText.Read(csv);
        return Audit.Run(read, DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn), WeekPlan.Default, Glossary.BuiltIn);
    }

    public static AuditReport RunFiles(params IEnumerable<string> paths)
    {
        var read = ChartReader.Read([.. paths.Select(path => new ChartSource(Path.GetFileName(path), () => File.OpenRead(path)))], WeekPlan.Default, Glossary.BuiltIn);
        return Audit.Run(read, DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn), WeekPlan.Default, Glossary.BuiltIn);
    }

    /// <summary>A folder below sample-logs, found from the test's own folder upwards.</summary>
    public static string SampleLogs(string folder)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Tendency.sln")))
            {
                return Path.Combine(at.FullName, "sample-logs", folder);
            }
        }

        throw new InvalidOperationException("Tendency.sln is not above the tests.");
    }
}
