namespace Tendency.Breakdown.Findings.Searching;

/// <summary>A split of the plays that can be made finer: at first by game, then also by membership in one situation after the other.</summary>
internal sealed class Strata
{
    public Strata(int[] game, int games)
    {
        Of = [.. game];
        Count = games;
    }

    /// <summary>Stratum of each play.</summary>
    public int[] Of { get; }

    public int Count { get; private set; }

    /// <summary>Parts every stratum into the plays in the set and the others.</summary>
    public void Split(IReadOnlyCollection<int> plays)
    {
        var inside = new bool[Of.Length];
        foreach (var play in plays)
        {
            inside[play] = true;
        }

        var numbers = new Dictionary<(int, bool), int>();
        for (var i = 0; i < Of.Length; i++)
        {
            var key = (Of[i], inside[i]);
            if (!numbers.TryGetValue(key, out var number))
            {
                number = numbers.Count;
                numbers.Add(key, number);
            }

            Of[i] = number;
        }

        Count = numbers.Count;
    }
}
