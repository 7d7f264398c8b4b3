namespace Tendency.Breakdown.Problems;

/// <summary>One thing that can be wrong with a chart, under a code that is never reused.</summary>
/// <param name="Code">Letter and three digits, for example <c>T101</c>.</param>
/// <param name="Severity">Error, warning or note.</param>
/// <param name="Title">What is wrong, in a few words; holds no instruction.</param>
/// <param name="Advice">What to do about it.</param>
/// <param name="How">How it is computed, for the reader who doubts it.</param>
public sealed record Rule(string Code, Severity Severity, string Title, string Advice, string How);
