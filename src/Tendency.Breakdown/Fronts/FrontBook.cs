using System.Diagnostics.CodeAnalysis;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Fronts;

/// <summary>The fronts, run schemes and ratings a study uses: the built-in ones, changed by what a staff puts in its week folder.</summary>
public sealed class FrontBook
{
    private readonly Dictionary<string, Front> _fronts;
    private readonly Dictionary<string, RunScheme> _schemes;
    private readonly Dictionary<(string Front, string Scheme, RunTo RunTo), Rating> _ratings;

    internal FrontBook(IReadOnlyList<Front> fronts, IReadOnlyList<RunScheme> schemes, IEnumerable<Rating> ratings)
    {
        Fronts = fronts;
        Schemes = schemes;
        _fronts = new Dictionary<string, Front>(StringComparer.Ordinal);
        foreach (var front in fronts)
        {
            foreach (var name in front.AlsoCalled.Prepend(front.Name))
            {
                _ = _fronts.TryAdd(Glossary.Key(name), front);
            }
        }

        _schemes = schemes.ToDictionary(s => Glossary.Key(s.Name), StringComparer.Ordinal);
        _ratings = [];
        foreach (var rating in ratings)
        {
            _ratings[(rating.Front, rating.Scheme, rating.RunTo)] = rating;
        }
    }

    /// <summary>The 13 fronts, 44 schemes and their ratings that come with the program.</summary>
    public static FrontBook BuiltIn { get; } = FrontBookReader.ReadBuiltIn();

    public IReadOnlyList<Front> Fronts { get; }

    public IReadOnlyList<RunScheme> Schemes { get; }

    public IEnumerable<Rating> Ratings => _ratings.Values;

    /// <summary>A front by its name or one of its other names, however spaced; null when there is none.</summary>
    public Front? Front(string name) => _fronts.GetValueOrDefault(Glossary.Key(name));

    /// <summary>A scheme by its name, however spaced; null when there is none.</summary>
    public RunScheme? Scheme(string name) => _schemes.GetValueOrDefault(Glossary.Key(name));

    /// <summary>The rating of a cell. An unrated cell counts as even and says so through <see cref="TryRating"/>.</summary>
    public double RatingOf(string front, string scheme, RunTo runTo) => TryRating(front, scheme, runTo, out var rating) ? rating.Value : 0;

    public bool TryRating(string front, string scheme, RunTo runTo, [NotNullWhen(true)] out Rating? rating) =>
        _ratings.TryGetValue((front, scheme, runTo), out rating);

    /// <summary>Whether a scheme can be rated at all; a run whose scheme was not seen can not.</summary>
    public bool IsRated(string scheme) => Fronts.Any(f => TryRating(f.Name, scheme, RunTo.ToBack, out _) || TryRating(f.Name, scheme, RunTo.Away, out _));

    /// <summary>The fronts of a plan in its order, each once; all fronts for an empty plan. Unknown names are returned apart.</summary>
    public (IReadOnlyList<Front> Fronts, IReadOnlyList<string> Unknown) Plan(IReadOnlyList<string> names)
    {
        if (names.Count == 0)
        {
            return (Fronts, []);
        }

        var known = names.Select(Front).OfType<Front>().Distinct().ToArray();
        var unknown = names.Where(n => Front(n) is null).ToArray();
        return (known, unknown);
    }
}
