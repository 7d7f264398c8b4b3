using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Charts;

/// <summary>Reads charts written as text in a test.</summary>
internal static class ChartText
{
    public static ReadLog Read(string csv, WeekPlan? week = null, Glossary? glossary = null) =>
        ChartReader.Read([new ChartSource("chart.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(csv)))], week ?? WeekPlan.Default, glossary ?? Glossary.BuiltIn);

    /// <summary>The plays with their derived columns.</summary>
    public static PlayLog Plays(string csv, WeekPlan? week = null, Glossary? glossary = null) =>
        DerivedColumns.AddTo(Read(csv, week, glossary).Plays, week ?? WeekPlan.Default, glossary ?? Glossary.BuiltIn);
}
