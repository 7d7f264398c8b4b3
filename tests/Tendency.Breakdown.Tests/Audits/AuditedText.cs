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
}
