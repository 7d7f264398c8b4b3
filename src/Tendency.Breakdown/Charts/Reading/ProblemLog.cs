using System.Collections.ObjectModel;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The problems met while reading, with a ceiling, so that a huge bad file can not fill the memory with complaints.</summary>
internal sealed class ProblemLog : Collection<Problem>
{
    /// <summary>So many problems of a rule are listed for a file; the others are only counted.</summary>
    public const int MostOfEachRule = 20_000;

    private readonly Dictionary<(string File, string Code), int> _counts = [];

    /// <summary>Says, for each rule and file past the ceiling, how many are not listed.</summary>
    public void Close()
    {
        foreach (var ((file, code), count) in _counts.Where(pair => pair.Value > MostOfEachRule).ToArray())
        {
            base.InsertItem(Count, new Problem(ReadingRules.ManyMore, new Place(file, 0, ""), $"{count - MostOfEachRule}", $"{count - MostOfEachRule} more problems of {code} are not listed."));
        }
    }

    protected override void InsertItem(int index, Problem item)
    {
        var count = _counts[(item.Place.File, item.Rule.Code)] = _counts.GetValueOrDefault((item.Place.File, item.Rule.Code)) + 1;
        if (count <= MostOfEachRule)
        {
            base.InsertItem(index, item);
        }
    }
}
