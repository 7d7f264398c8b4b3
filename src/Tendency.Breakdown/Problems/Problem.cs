namespace Tendency.Breakdown.Problems;

/// <summary>One finding about one place of a chart. Reading never stops for it.</summary>
/// <param name="Rule">The rule it breaks.</param>
/// <param name="Place">File, physical line, header.</param>
/// <param name="Value">The cell as written.</param>
/// <param name="Message">What is wrong here, in a sentence.</param>
/// <param name="Suggestion">The value that would mend it, or what to do; may be empty.</param>
public sealed record Problem(Rule Rule, Place Place, string Value, string Message, string Suggestion = "");
