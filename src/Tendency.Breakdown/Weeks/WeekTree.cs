using Tendency.Breakdown.Problems;
using Tomlyn.Syntax;

namespace Tendency.Breakdown.Weeks;

/// <summary>A week file's syntax as named tables, whichever of TOML's ways of writing a table was used.</summary>
internal sealed class WeekTree
{
    private readonly string _file;
    private readonly List<Problem> _problems;
    private readonly Dictionary<string, List<WeekTable>> _tables = new(StringComparer.Ordinal);

    private WeekTree(string file, List<Problem> problems)
    {
        _file = file;
        _problems = problems;
        Top = new WeekTable(file, "", default, problems);
    }

    /// <summary>The keys above the first table.</summary>
    public WeekTable Top { get; }

    /// <summary>Names of the tables, and where one of them first begins.</summary>
    public Dictionary<string, TextPosition> Names { get; } = new(StringComparer.Ordinal);

    /// <summary>The one table of that name; an empty one when the file has none.</summary>
    public WeekTable Table(string name) => Tables(name) is [var first, ..] ? first : new WeekTable(_file, name, default, _problems);

    /// <summary>The tables of that name, in the file's order.</summary>
    public IReadOnlyList<WeekTable> Tables(string name) => _tables.GetValueOrDefault(name, []);

    public static WeekTree From(string file, DocumentSyntax document, List<Problem> problems)
    {
        var tree = new WeekTree(file, problems);
        foreach (var pair in document.KeyValues)
        {
            tree.Put(tree.Top, "", pair);
        }

        foreach (var syntax in document.Tables)
        {
            var name = Joined(syntax.Name);
            var table = syntax is TableArraySyntax ? tree.Begin(name, syntax.Span.Start) : tree.TableOrNew(name, syntax.Span.Start);
            foreach (var pair in syntax.Items)
            {
                tree.Put(table, name, pair);
            }
        }

        return tree;
    }

    private void Put(WeekTable table, string name, KeyValueSyntax pair)
    {
        if (pair.Key is not { } key || pair.Value is not { } value)
        {
            return;
        }

        var parts = Parts(key);
        if (parts.Count > 1)
        {
            // plan.fronts = […] says the same as fronts = […] under [plan].
            var under = string.Join('.', [.. name.Length > 0 ? [name] : Array.Empty<string>(), .. parts.Take(parts.Count - 1)]);
            Put(TableOrNew(under, key.Span.Start), under, parts[^1], key.Span.Start, value);
            return;
        }

        Put(table, name, parts[0], key.Span.Start, value);
    }

    private void Put(WeekTable table, string name, string key, TextPosition at, ValueSyntax value)
    {
        var path = name.Length == 0 ? key : $"{name}.{key}";
        var tables = value switch
        {
            InlineTableSyntax inline => [inline],
            ArraySyntax { Items.ChildrenCount: > 0 } list when list.Items.All(item => item.Value is InlineTableSyntax) => list.Items.Select(item => item.Value).OfType<InlineTableSyntax>(),
            _ => null,
        };
        if (tables is null)
        {
            table.Add(key, at, value);
            return;
        }

        foreach (var inline in tables)
        {
            var begun = value is ArraySyntax ? Begin(path, inline.Span.Start) : TableOrNew(path, inline.Span.Start);
            foreach (var pair in inline.Items.Select(item => item.KeyValue).OfType<KeyValueSyntax>())
            {
                Put(begun, path, pair);
            }
        }
    }

    private WeekTable TableOrNew(string name, TextPosition at) => Tables(name) is [var first, ..] ? first : Begin(name, at);

    private WeekTable Begin(string name, TextPosition at)
    {
        _ = Names.TryAdd(name, at);
        if (!_tables.TryGetValue(name, out var tables))
        {
            tables = _tables[name] = [];
        }

        tables.Add(new WeekTable(_file, name, at, _problems));
        return tables[^1];
    }

    private static string Joined(KeySyntax? key) => key is null ? "" : string.Join('.', Parts(key));

    private static List<string> Parts(KeySyntax key) =>
        [Name(key.Key), .. key.DotKeys.Select(part => Name(part.Key))];

    private static string Name(BareKeyOrStringValueSyntax? key) => key switch
    {
        StringValueSyntax text => text.Value ?? "",
        BareKeySyntax bare => bare.Key?.Text ?? "",
        _ => "",
    };
}
