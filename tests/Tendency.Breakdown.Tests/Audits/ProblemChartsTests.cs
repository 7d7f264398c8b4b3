using Tendency.Breakdown.Audits;
using Tendency.Tests.Shared;

namespace Tendency.Breakdown.Tests.Audits;

/// <summary>Each rule has a chart in sample-logs/problems that breaks it and nothing else.</summary>
public class ProblemChartsTests
{
    private static readonly string s_folder = Checkout.SampleLogs("problems");

    public static TheoryData<string> Charts => [.. Directory.EnumerateFiles(s_folder, "*.csv").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Charts))]
    public void Run_ProblemChart_RaisesItsCodeAlone(string chart)
    {
        var report = AuditedText.RunFiles(Path.Combine(s_folder, chart));

        Assert.Equal([chart.Split('-')[0]], report.Problems.Select(problem => problem.Rule.Code).Distinct());
    }

    [Fact]
    public void Audit_EveryRule_HasItsChart()
    {
        var charted = Directory.EnumerateFiles(s_folder, "*.csv").Select(path => Path.GetFileName(path).Split('-')[0]).ToHashSet();

        Assert.Empty(RuleCatalogue.Audit.Select(rule => rule.Code).Where(code => !charted.Contains(code)));
    }

    [Fact]
    public void All_Codes_AreUniqueAndSayWhatToDo()
    {
        Assert.Equal(RuleCatalogue.All.Count, RuleCatalogue.All.Select(rule => rule.Code).Distinct().Count());
        Assert.All(RuleCatalogue.All, rule => Assert.True(rule.Advice.Length > 0 && rule.How.Length > 0));
    }
}
