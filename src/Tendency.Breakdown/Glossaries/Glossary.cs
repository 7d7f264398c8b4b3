using CsvHelper;

namespace Tendency.Breakdown.Glossaries;

/// <summary>Words of the trade by kind, found under any of their spellings.</summary>
public sealed class Glossary
{
    private static readonly Lazy<Glossary> s_builtIn = new(ReadBuiltIn);

    private readonly Dictionary<(string Kind, string Key), Term> _terms = [];

    /// <param name="terms">Of two terms that claim a word, the staff's has it, else the first.</param>
    public Glossary(IEnumerable<Term> terms)
    {
        Terms = [.. terms];
        foreach (var term in Terms.OrderByDescending(term => term.FromStaff))
        {
            foreach (var word in term.Aliases.Prepend(term.Canonical))
            {
                _ = _terms.TryAdd((term.Kind, Key(word)), term);
            }
        }
    }

    /// <summary>The glossary that comes with the program.</summary>
    public static Glossary BuiltIn => s_builtIn.Value;

    public IReadOnlyList<Term> Terms { get; }

    /// <summary>The term a word stands for among those of one kind, or null.</summary>
    public Term? Find(string kind, string word) => _terms.GetValueOrDefault((kind, Key(word)));

    /// <summary>All spellings of one kind, canonical ones first of each term.</summary>
    public IEnumerable<string> Words(string kind) =>
        Terms.Where(term => term.Kind == kind).SelectMany(term => term.Aliases.Prepend(term.Canonical));

    /// <summary>This glossary with a staff's terms added; a word they claim is theirs, a term of the same name keeps the built-in spellings too.</summary>
    public Glossary With(IEnumerable<Term> staff)
    {
        var own = staff.Select(term => term with { FromStaff = true }).ToArray();
        var names = own.Select(term => (term.Kind, Key(term.Canonical))).ToHashSet();
        var replaced = Terms.Where(term => names.Contains((term.Kind, Key(term.Canonical)))).ToLookup(term => (term.Kind, Key(term.Canonical)));
        var joined = own.Select(term => term with { Aliases = [.. term.Aliases, .. replaced[(term.Kind, Key(term.Canonical))].SelectMany(old => old.Aliases)] });
        return new Glossary([.. joined, .. Terms.Where(term => !names.Contains((term.Kind, Key(term.Canonical))))]);
    }

    /// <summary>The staff's own entry of a formation, under either kind, or null.</summary>
    public Term? StaffFormation(string formation) =>
        Find("formation", formation) is { FromStaff: true } own ? own
        : Find("formation_family", formation) is { FromStaff: true } family ? family
        : null;

    /// <summary>The family of a formation word; empty when no rule knows it.</summary>
    public string FormationFamily(string formation) => FormationFamily(formation, FormationSeen.Nothing);

    /// <summary>The family of a formation word, or of what other columns say of the snap when the word tells nothing; else empty.</summary>
    public string FormationFamily(string formation, FormationSeen seen) =>
        FormationFamilies.Of(FormationWord.Of(formation).Shape, this, seen);

    /// <summary>The family of a run scheme: zone, gap, perimeter, option, quarterback run; other when no rule knows it.</summary>
    public string RunFamily(string scheme) =>
        Find("run_scheme", scheme) is { } term ? term.Family.Length > 0 ? term.Family : RunSchemeFamilies.Of(term.Canonical) : "other";

    /// <summary>A word as it is compared: lower case, without spaces, underscores, hyphens and points.</summary>
    public static string Key(string word)
    {
        var key = new System.Text.StringBuilder(word.Length);
        foreach (var c in word)
        {
            if (!char.IsWhiteSpace(c) && c is not ('_' or '-' or '.'))
            {
                _ = key.Append(char.ToLowerInvariant(c));
            }
        }

        return key.ToString();
    }

    private static Glossary ReadBuiltIn()
    {
        using var stream = typeof(Glossary).Assembly.GetManifestResourceStream("Glossaries/terms.csv")
            ?? throw new InvalidOperationException("The built-in glossary is not embedded.");
        using var csv = CsvReader.Create(stream, new CsvReaderOptions());
        csv.ReadHeader();
        var terms = new List<Term>();
        while (csv.Read())
        {
            terms.Add(new Term(
                csv.GetString(0).Replace('_', ' '),
                csv.GetString(1),
                csv.GetString(2).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
                csv.GetString(3)));
        }

        return new Glossary(terms);
    }
}
