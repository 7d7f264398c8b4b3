namespace Tendency.Breakdown.Weeks;

/// <summary>The names a week file may refer to; given from outside, because charts come after weeks.</summary>
/// <param name="Columns">Our columns, which <c>[headers]</c> maps.</param>
/// <param name="Dimensions">Columns and derived dimensions, by which <c>[[leave_out]]</c> may choose plays.</param>
public sealed record KnownNames(IReadOnlyList<string> Columns, IReadOnlyList<string> Dimensions);
