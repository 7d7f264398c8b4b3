using System.Text.RegularExpressions;
using Tendency.Tests.House;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Documents;

/// <summary>DEVELOPERS.md names files and types; each of them must be there.</summary>
public partial class DevelopersTests
{
    private static readonly string s_page = File.ReadAllText(Path.Combine(Checkout.Root, "DEVELOPERS.md"));

    private static readonly string[] s_sources = [.. Repository.Sources("src"), .. Repository.Sources("tests")];

    [Fact]
    public void Developers_Files_AreThere()
    {
        var files = Directory.EnumerateFiles(Path.Combine(Checkout.Root, "src"), "*", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Path.Combine(Checkout.Root, "tests"), "*", SearchOption.AllDirectories))
            .Select(file => file.Replace('\\', '/'))
            .ToArray();
        var named = Quoted().Matches(s_page).Concat(Link().Matches(s_page)).Select(match => match.Groups[1].Value).Where(name => FileName().IsMatch(name)).ToArray();

        Assert.NotEmpty(named);
        Assert.Empty(named.Where(name => !files.Any(file => file.EndsWith("/" + name, StringComparison.Ordinal))));
    }

    [Fact]
    public void Developers_Types_AreInTheSources()
    {
        var words = s_sources.SelectMany(file => Repository.Lines(file)).SelectMany(line => Word().Matches(line)).Select(word => word.Value).ToHashSet(StringComparer.Ordinal);
        var named = Quoted().Matches(s_page).Select(match => match.Groups[1].Value).Where(name => TypeName().IsMatch(name)).SelectMany(name => name.Split('.')).ToArray();

        Assert.NotEmpty(named);
        Assert.Empty(named.Where(name => !words.Contains(name)));
    }

    [Fact]
    public void Developers_IsReadInOneSitting() => Assert.InRange(s_page.Count(letter => letter == '\n'), 1, 200);

    [GeneratedRegex("`([^`\n]+)`")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\]\(([^)#:]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^[\w./-]+\.(cs|csv|md)$")]
    private static partial Regex FileName();

    [GeneratedRegex(@"^[A-Z][a-z]\w+(\.[A-Z]\w+)*$")]
    private static partial Regex TypeName();

    [GeneratedRegex(@"\w+")]
    private static partial Regex Word();
}
