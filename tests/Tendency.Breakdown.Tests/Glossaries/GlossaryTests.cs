using System.Text;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Tests.Charts;

namespace Tendency.Breakdown.Tests.Glossaries;

public class GlossaryTests
{
    [Fact]
    public void BuiltIn_EverySpelling_BelongsToOneTermOfItsKind()
    {
        var shared = Glossary.BuiltIn.Terms
            .SelectMany(term => term.Aliases.Prepend(term.Canonical).Select(word => (term.Kind, Key: Glossary.Key(word), term.Canonical)).Distinct())
            .GroupBy(word => (word.Kind, word.Key)).Where(group => group.Select(word => word.Canonical).Distinct().Count() > 1)
            .Select(group => $"{group.Key}: {string.Join(", ", group.Select(word => word.Canonical))}");

        Assert.Empty(shared);
    }

    [Theory]
    [InlineData("GT", "counter gt")]
    [InlineData("GH", "counter gh")]
    [InlineData("IZ", "inside zone")]
    [InlineData("OZ", "outside zone")]
    [InlineData("stretch", "outside zone")]
    public void Find_ShortCodes_StayApart(string written, string canonical) =>
        Assert.Equal(canonical, Glossary.BuiltIn.Find("run_scheme", written)?.Canonical);

    [Theory]
    [InlineData("powr", "power", true)]
    [InlineData("GT", "GH", false)]
    [InlineData("IZ", "OZ", false)]
    [InlineData("cover 2", "cover 3", false)]
    [InlineData("over", "under", false)]
    [InlineData("insdie zone", "inside zone", true)]
    public void Between_ShortOrNumberedWords_AreNoSlips(string a, string b, bool slip) => Assert.Equal(slip, TypingSlip.Between(a, b));

    [Fact]
    public void Read_StaffGlossary_AddsAndOverrides()
    {
        var problems = new List<Problem>();
        var glossary = Read("canonical,kind,aliases,family\nTREY,formation,Trips;3x1 open,trips 3x1\nStretch,run_scheme,,perimeter\n", problems);

        Assert.Empty(problems);
        Assert.Equal("TREY", glossary.StaffFormation("trips")?.Canonical);
        Assert.Equal("trips 3x1", glossary.FormationFamily("TREY"));
        Assert.Equal("Stretch", glossary.Find("run_scheme", "stretch")?.Canonical);
        Assert.Equal("perimeter", glossary.RunFamily("stretch"));
        Assert.Equal("outside zone", glossary.Find("run_scheme", "wide zone")?.Canonical);
    }

    [Fact]
    public void Read_StaffGlossaryWithMistakes_NamesLineAndNearestKind()
    {
        var problems = new List<Problem>();
        _ = Read("canonical,kind,aliases,family\n\nTrey,formatoin,,\n,formation,x,\nA,formation,zip,\nB,formation,zip,\nOne,run_scheme,,zones\n", problems);

        Assert.Equal(
            [("T302", 3, "formation"), ("T303", 4, ""), ("T304", 6, ""), ("T305", 7, "zone")],
            problems.Select(p => (p.Rule.Code, p.Place.Line, p.Suggestion)));
    }

    [Fact]
    public void Read_NoHeader_SaysSo()
    {
        var problems = new List<Problem>();
        Assert.Same(Glossary.BuiltIn, Read("hello\n", problems));
        Assert.Equal("T301", Assert.Single(problems).Rule.Code);
    }

    [Fact]
    public void Plays_FormationWithSide_CountsAsTheShapeAndFillsStrength()
    {
        var log = ChartText.Plays("game,play,down,distance,call,formation,strength\nA,1,1,10,run,Trips Rt,\nA,2,2,6,run,trips right,L\nA,3,3,1,run,TRIPS R,\nA,4,4,1,run,,\n");

        Assert.Equal(["Trips", "Trips", "Trips", ""], Enumerable.Range(0, 4).Select(row => log.Category(ColumnNames.Formation)[row]));
        Assert.Equal(["R", "L", "R", ""], Enumerable.Range(0, 4).Select(row => log.Category(ColumnNames.Strength)[row]));
        Assert.Equal("trips 3x1", log.Category(ColumnNames.FormationFamily)[2]);
    }

    [Fact]
    public void Plays_StaffSpellsAFormation_IsPrintedSo()
    {
        var glossary = Read("canonical,kind,aliases,family\nTREY,formation,Trips,\n", []);
        var log = ChartText.Plays("game,play,down,distance,call,formation\nA,1,1,10,run,Trips Rt\nA,2,2,6,run,trey\nA,3,3,1,run,Zorp\n", glossary: glossary);

        Assert.Equal(["TREY", "TREY", "Zorp"], Enumerable.Range(0, 3).Select(row => log.Category(ColumnNames.Formation)[row]));
    }

    [Fact]
    public void Plays_AliasesOfAFront_GroupUnderTheCommonSpelling()
    {
        var log = ChartText.Plays("game,play,down,distance,call,front\nA,1,1,10,run,404\nA,2,2,6,run,Tite\nA,3,3,1,run,Tite\n");

        Assert.Equal(["Tite", "Tite", "Tite"], Enumerable.Range(0, 3).Select(row => log.Category(ColumnNames.Front)[row]));
    }

    private static Glossary Read(string csv, ICollection<Problem> problems) =>
        GlossaryReader.Read("glossary.csv", new MemoryStream(Encoding.UTF8.GetBytes(csv)), problems);
}
