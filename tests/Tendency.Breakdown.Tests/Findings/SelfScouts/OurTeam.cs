using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.Tests.Shared;

namespace Tendency.Breakdown.Tests.Findings.SelfScouts;

/// <summary>The sample charts of our own team.</summary>
internal static class OurTeam
{
    public static StudiedPlays Offense { get; } = Read("our-team/offense", Unit.Offense);

    public static StudiedPlays Defense { get; } = Read("our-team/defense", Unit.Defense);

    private static StudiedPlays Read(string folder, Unit unit)
    {
        var files = Directory.GetFiles(Checkout.SampleLogs(folder), "*.csv").Order(StringComparer.Ordinal);
        var week = WeekPlan.Default with { Subject = "Marrow Point" };
        var read = ChartReader.Read([.. files.Select(file => new ChartSource(Path.GetFileName(file), () => File.OpenRead(file)))], week, Glossary.BuiltIn);
        return StudiedPlays.Choose(DerivedColumns.AddTo(read.Plays, week, Glossary.BuiltIn), week, [], unit, out _)!;
    }
}
