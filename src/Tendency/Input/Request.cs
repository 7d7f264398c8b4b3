using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>What the user asked for, in the options that all commands share.</summary>
/// <param name="Charts">Files, folders or week files.</param>
/// <param name="Week">Week file named apart; null = the folder's.</param>
/// <param name="Only">Conditions that must all hold.</param>
/// <param name="Level">Level of the intervals; null = the week file's.</param>
/// <param name="Format">How data is written.</param>
/// <param name="Output">File to write; null = standard output.</param>
/// <param name="Seed">Seed of everything that draws at random.</param>
/// <param name="Corrections">File of accepted corrections; null = the week file's.</param>
/// <param name="Sheet">Sheet of a workbook; null = the first.</param>
/// <param name="Quiet">Whether problems stay unsaid, all but the row accounting.</param>
internal sealed record Request(
    IReadOnlyList<string> Charts, string? Week, IReadOnlyList<Condition> Only, double? Level, OutputFormat Format, string? Output, int Seed, string? Corrections, string? Sheet, bool Quiet);
