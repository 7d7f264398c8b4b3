namespace Tendency.Breakdown.Problems;

/// <summary>How much a problem matters: an error makes a number wrong, a warning may, a note is only worth knowing.</summary>
public enum Severity
{
    Error,
    Warning,
    Note,
}
