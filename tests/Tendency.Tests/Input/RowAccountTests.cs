using System.Text.RegularExpressions;
using Tendency.Tests.Commands;

namespace Tendency.Tests.Input;

public sealed partial class RowAccountTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Theory]
    [InlineData("tables", "nowhere.csv", "--of", "call")]
    [InlineData("tables", "empty.csv", "--of", "call", "--quiet")]
    [InlineData("tables", "both.csv", "--of", "call")]
    [InlineData("tables", "both.csv", "--of", "nothing")]
    [InlineData("agree", "both.csv")]
    [InlineData("agree", "both.csv", "empty.csv", "--quiet")]
    public void Run_NotDone_EndsWithAnAccountThatAddsUp(params string[] arguments)
    {
        _ = _tendency.Write("empty.csv", "");
        _ = _tendency.Write("both.csv", "game,play,offense,down,distance,call\nA,1,North,1,10,run\nA,2,South,1,10,pass\nA,x,South,1,10,pass\n");

        var ran = _tendency.Run(arguments);

        Assert.Equal(2, ran.ExitCode);
        var account = Account().Match(ran.ErrorLines[^1]);
        Assert.True(account.Success, ran.Error);
        Assert.Equal(Number(1), Number(2) + Number(3) + Number(4));

        int Number(int group) => int.Parse(account.Groups[group].Value, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Audit_TwoOffensesAndNoSubject_HasUsedEveryReadableRow()
    {
        _ = _tendency.Write("both.csv", "game,play,offense,down,distance,call\nA,1,North,1,10,run\nA,2,South,1,10,pass\nA,x,South,1,10,pass\n");

        var ran = _tendency.Run("audit", "both.csv", "--quiet");

        Assert.Equal("rows 3 = used 2 + left out 0 + set aside 1", ran.ErrorLines[^1]);
    }

    [Fact]
    public void Audit_Json_HasNullWhereNothingIsDefined()
    {
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call\nA,1,1,10,run\nA,x,1,10,pass\n");

        var ran = _tendency.Run("audit", "chart.csv", "--format", "json");

        Assert.Contains("null", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\"\"", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\"line\": 0", ran.Output, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^rows (\d+) = used (\d+) \+ left out (\d+) \+ set aside (\d+)$")]
    private static partial Regex Account();
}
