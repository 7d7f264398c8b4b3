namespace Tendency.Inference.Multiplicity;

/// <summary>Permutation p-values, one per cell in the order given.</summary>
/// <param name="Statistics">Observed |Z| of each cell.</param>
/// <param name="RawP">P of each cell alone.</param>
/// <param name="SingleStep">P against the largest statistic of all cells.</param>
/// <param name="StepDown">P against the largest of the cells that are no more extreme; never above SingleStep, rising along the ranking.</param>
/// <param name="Arrangements">Shuffles drawn, or arrangements enumerated.</param>
/// <param name="Exact">Whether all arrangements were enumerated.</param>
public sealed record MaxTResult(
    IReadOnlyList<double> Statistics,
    IReadOnlyList<double> RawP,
    IReadOnlyList<double> SingleStep,
    IReadOnlyList<double> StepDown,
    double Arrangements,
    bool Exact);
