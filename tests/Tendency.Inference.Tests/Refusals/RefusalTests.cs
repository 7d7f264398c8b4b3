using System.Reflection;
using Tendency.Inference.Functions;

namespace Tendency.Inference.Tests.Refusals;

/// <summary>Bad arguments: every public function refuses them by name, or answers with a number; none lets NaN through or hangs.</summary>
public sealed class RefusalTests
{
    private static readonly Refusal[] s_all = [.. NumberRefusals.All(), .. ListRefusals.All(), .. ForecastRefusals.All()];

    [Fact]
    public void EveryFunction_BadArgument_IsRefusedByName() => Assert.Empty(s_all.Select(row => row.Complaint()).Where(complaint => complaint is not null));

    // A list of what takes an argument: whoever adds a function adds a row.
    [Fact]
    public void EveryFunction_ThatTakesAnArgument_IsInTheTable()
    {
        var tried = s_all.Select(row => row.Member).ToHashSet();
        Assert.Empty(Functions().Where(function => !tried.Contains(function)));
        Assert.Empty(tried.Where(member => !Functions().Contains(member)));
    }

    private static HashSet<string> Functions()
    {
        const BindingFlags Own = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        string[] compiled = ["Equals", "ToString", "GetHashCode", "Deconstruct", "<Clone>$"];
        var found = new HashSet<string>();
        foreach (var type in typeof(BetaDistribution).Assembly.GetExportedTypes().Where(type => !type.IsEnum))
        {
            found.UnionWith(type.GetMethods(Own)
                .Where(method => !method.IsSpecialName && method.GetParameters().Length > 0 && !compiled.Contains(method.Name))
                .Select(method => $"{type.Name}.{method.Name}"));

            // A record's own constructor takes its properties, names in capitals: what functions found, not what they are asked.
            found.UnionWith(type.GetConstructors(Own)
                .Where(made => made.GetParameters() is [var first, ..] && char.IsLower(first.Name![0]))
                .Select(_ => $"{type.Name}.new"));
        }

        return found;
    }
}
