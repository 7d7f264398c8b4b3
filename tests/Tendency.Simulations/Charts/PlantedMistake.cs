namespace Tendency.Simulations.Charts;

/// <summary>One mistake put into a correct chart.</summary>
/// <param name="Kind">What went wrong.</param>
/// <param name="Key">Identity of the row that is wrong; of the row after it where one is missing.</param>
/// <param name="Column">The wrong cell; empty when it is the whole row.</param>
/// <param name="Right">What the cell should say.</param>
internal sealed record PlantedMistake(string Kind, int Key, string Column, string Right);
