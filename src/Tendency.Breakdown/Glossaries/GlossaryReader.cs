using CsvHelper;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Glossaries;

/// <summary>Reads a staff's own glossary: CSV with the columns canonical, kind, aliases (joined by semicolons), family.</summary>
public static class GlossaryReader
{
    private static readonly string[] s_runFamilies = ["zone", "gap", "perimeter", "option", "quarterback run", "other"];

    /// <param name="file">Name for messages.</param>
    /// <param name="stream">UTF-8 text; not closed.</param>
    /// <param name="problems">Takes what is wrong, with its line.</param>
    /// <returns>The built-in glossary with the staff's words added or overriding.</returns>
    public static Glossary Read(string file, Stream stream, ICollection<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var rows = Rows(stream);
        var headerAt = rows.FindIndex(row => row.Cells.Any(cell => cell.Length > 0));
        var header = headerAt < 0 ? [] : rows[headerAt].Cells.Select(Glossary.Key).ToList();
        var columns = new Columns(header.IndexOf("canonical"), header.IndexOf("kind"), header.IndexOf("aliases"), header.IndexOf("family"));
        if (columns.Canonical < 0 || columns.Kind < 0)
        {
            problems.Add(new Problem(GlossaryRules.UnreadableGlossary, new Place(file, headerAt < 0 ? 0 : rows[headerAt].Line, ""), string.Join(',', header),
                $"{file} does not begin with the columns canonical, kind, aliases, family.", "canonical,kind,aliases,family"));
            return Glossary.BuiltIn;
        }

        var kinds = Glossary.BuiltIn.Terms.Select(term => term.Kind).Append("formation").Distinct(StringComparer.Ordinal).ToArray();
        var owners = new Dictionary<(string, string), string>();
        var terms = rows.Skip(headerAt + 1).Where(row => row.Cells.Any(cell => cell.Length > 0))
            .Select(row => TermOf(file, row, columns, kinds, owners, problems)).OfType<Term>().ToArray();
        return Glossary.BuiltIn.With(terms);
    }

    private static Term? TermOf(
        string file, (int Line, string[] Cells) row, Columns columns, string[] kinds, Dictionary<(string, string), string> owners, ICollection<Problem> problems)
    {
        var canonical = Cell(row.Cells, columns.Canonical);
        var written = Cell(row.Cells, columns.Kind);
        var family = Cell(row.Cells, columns.Family);
        if (canonical.Length == 0)
        {
            problems.Add(new Problem(GlossaryRules.WordWithoutName, new Place(file, row.Line, "canonical"), "", "canonical is blank; the row is not used."));
            return null;
        }

        var kind = kinds.FirstOrDefault(k => Glossary.Key(k) == Glossary.Key(written));
        if (kind is null)
        {
            var nearest = kinds.MinBy(k => NearestWord.Edits(Glossary.Key(k), Glossary.Key(written)))!;
            problems.Add(new Problem(GlossaryRules.UnknownKind, new Place(file, row.Line, "kind"), written,
                $"'{canonical}' has the kind '{written}', which is none of {string.Join(", ", kinds)}; the row is not used.", nearest));
            return null;
        }

        if (kind == "run_scheme" && family.Length > 0 && !s_runFamilies.Contains(family.Replace('_', ' '), StringComparer.OrdinalIgnoreCase))
        {
            problems.Add(new Problem(GlossaryRules.UnknownFamily, new Place(file, row.Line, "family"), family,
                $"'{canonical}' has the family '{family}', which is none of {string.Join(", ", s_runFamilies)}; it is counted by rule.",
                s_runFamilies.MinBy(f => NearestWord.Edits(f, family.ToLowerInvariant()))!));
            family = "";
        }

        var aliases = new List<string>();
        foreach (var alias in Cell(row.Cells, columns.Aliases).Split([';', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Prepend(canonical))
        {
            if (!owners.TryAdd((kind, Glossary.Key(alias)), canonical) && owners[(kind, Glossary.Key(alias))] is var owner && owner != canonical)
            {
                problems.Add(new Problem(GlossaryRules.WordTwice, new Place(file, row.Line, "aliases"), alias, $"'{alias}' already stands for '{owner}'; it is not moved to '{canonical}'."));
            }
            else if (alias != canonical)
            {
                aliases.Add(alias);
            }
        }

        var spelt = kind is "run_scheme" ? canonical.Replace('_', ' ') : canonical;
        return new Term(spelt, kind, aliases, "") { Family = family.Replace('_', ' '), FromStaff = true };
    }

    private static string Cell(string[] cells, int at) => at >= 0 && at < cells.Length ? cells[at] : "";

    private static List<(int Line, string[] Cells)> Rows(Stream stream)
    {
        using var csv = CsvReader.Create(stream, new CsvReaderOptions { HasHeader = false, TrackLineNumbers = true, FieldCountMismatch = CsvFieldCountHandling.Skip });
        var rows = new List<(int, string[])>();
        while (csv.Read())
        {
            rows.Add(((int)csv.LineNumber, [.. Enumerable.Range(0, csv.FieldCount).Select(at => csv.GetString(at).Trim())]));
        }

        return rows;
    }

    private readonly record struct Columns(int Canonical, int Kind, int Aliases, int Family);
}
