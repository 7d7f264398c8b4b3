using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Weeks;

/// <summary>A week file read: the plan made of what is valid, and every mistake, by line.</summary>
public sealed record WeekReading(WeekPlan Plan, IReadOnlyList<Problem> Problems);
