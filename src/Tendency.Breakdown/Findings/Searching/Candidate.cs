namespace Tendency.Breakdown.Findings.Searching;

/// <summary>A situation and outcome that may be a tell.</summary>
/// <param name="Dimensions">Indices into the ground's dimensions, rising.</param>
/// <param name="Values">Value of each.</param>
/// <param name="Outcome">Index of the outcome tested.</param>
/// <param name="Plays">Plays of the situation.</param>
/// <param name="Z">Signed statistic, positive for more than usual.</param>
/// <param name="P">Exact two-sided p-value.</param>
internal sealed record Candidate(int[] Dimensions, int[] Values, int Outcome, int Plays, double Z, double P)
{
    public double Q { get; init; } = 1;

    /// <summary>Least p-value it could have had.</summary>
    public double LeastP { get; init; }

    /// <summary>Part of the accepted rate of false alarms that it may spend; those of all pairs searched add up to 1.</summary>
    public double Part { get; init; }

    /// <summary>Same for the same situation and outcome in another search over the same dimensions.</summary>
    public string Key => $"{SituationKey}:{Outcome}";

    public string SituationKey => $"{string.Join(',', Dimensions)}:{string.Join(',', Values)}";

    /// <summary>What they do there: a two-way outcome was tested by its first value; the one that is more frequent than usual is the tell.</summary>
    public int OutcomeIn(SearchGround ground) => ground.IsTwoWay && Z < 0 ? 1 - Outcome : Outcome;

    public bool Holds(SearchGround ground, int play)
    {
        for (var k = 0; k < Dimensions.Length; k++)
        {
            if (ground.Dimensions[Dimensions[k]].Codes[play] != Values[k])
            {
                return false;
            }
        }

        return true;
    }

    public int[] PlaysIn(SearchGround ground) => [.. Enumerable.Range(0, ground.Rows.Length).Where(play => Holds(ground, play))];

    /// <summary>Every shallower situation that this one is part of, with at least one condition; statistics are not theirs.</summary>
    public IEnumerable<Candidate> Parents() => Enumerable.Range(1, (1 << Dimensions.Length) - 2).Select(kept => this with
    {
        Dimensions = [.. Dimensions.Where((_, k) => (kept >> k & 1) == 1)],
        Values = [.. Values.Where((_, k) => (kept >> k & 1) == 1)],
    });
}
