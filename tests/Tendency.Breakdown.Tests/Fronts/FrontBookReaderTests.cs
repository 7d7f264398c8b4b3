using Tendency.Breakdown.Fronts;

namespace Tendency.Breakdown.Tests.Fronts;

public class FrontBookReaderTests
{
    private const string FrontHeader = "front,set_by,line_to,line_off,nose,linebackers,overhangs,late\n";

    [Fact]
    public void Read_NewFrontAndItsRating_IsAddedAndTheRestStays()
    {
        var read = Read(FrontHeader + "wall,strength,3 5,3 5,floats,2,0,one\n", "front,scheme,run_to,rating,reason\nWall,inside_zone,,2,five on the line\n");
        Assert.Empty(read.Problems);
        Assert.Equal(14, read.Book.Fronts.Count);
        Assert.Equal(2, read.Book.RatingOf("wall", "inside zone", RunTo.Away));
        Assert.Equal(2, read.Book.RatingOf("wall", "inside zone", RunTo.ToBack));
        Assert.Equal(0, read.Book.RatingOf("wall", "power", RunTo.Away));
        Assert.Equal(-1, read.Book.RatingOf("tight", "power", RunTo.Away));
    }

    [Fact]
    public void Read_TwelveMen_IsNoFront()
    {
        var read = Read(FrontHeader + "crowd,strength,3 5 edge,3 5 edge,floats,3,1,open middle\n", null);
        Assert.Contains("a defense has eleven", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
        Assert.All(read.Book.Fronts, front => Assert.InRange(front.Men, 7, Front.MostMen));
    }

    [Fact]
    public void Read_ChangedRating_ReplacesOneSideOnly()
    {
        var read = Read(null, "front,scheme,run_to,rating\ntight,power,away,1\n");
        Assert.Equal((1, -1), (read.Book.RatingOf("tight", "power", RunTo.Away), read.Book.RatingOf("tight", "power", RunTo.ToBack)));
        Assert.True(read.Book.TryRating("tight", "power", RunTo.Away, out var rating));
        Assert.Equal("staff", rating.Basis);
        Assert.Equal(-1, FrontBook.BuiltIn.RatingOf("tight", "power", RunTo.Away));
    }

    [Theory]
    [InlineData("tihgt,power,away,1", "F002", 2, "front", "tight")]
    [InlineData("tight,cuonter gt,away,1", "F003", 2, "scheme", "counter gt")]
    [InlineData("tight,power,awya,1", "F004", 2, "run_to", "away")]
    [InlineData("tight,power,away,3", "F004", 2, "rating", "")]
    [InlineData("tight,power,away,good", "F004", 2, "rating", "")]
    [InlineData("tight,power,away,", "F004", 2, "rating", "")]
    [InlineData("\ntight,power,away,\"1", "F005", 3, "", "")]
    public void Read_MistakeInARating_IsReportedWithLineAndNearestWord(string row, string code, int line, string column, string nearest)
    {
        var read = Read(null, "front,scheme,run_to,rating\n" + row + "\n");
        var problem = Assert.Single(read.Problems);
        Assert.Equal((code, "ratings.csv", line, column, nearest), (problem.Rule.Code, problem.Place.File, problem.Place.Line, problem.Place.Column, problem.Suggestion));
        Assert.Equal(-1, read.Book.RatingOf("tight", "power", RunTo.Away));
    }

    [Theory]
    [InlineData("wall,strength,3 5,3 55,floats,2,0,one", "line_off", "5")]
    [InlineData("wall,strenght,3 5,3 5,floats,2,0,one", "set_by", "strength")]
    [InlineData("wall,strength,3 5,3 5,flotas,2,0,one", "nose", "floats")]
    [InlineData("wall,strength,3 5,3 5,floats,two,0,one", "linebackers", "")]
    [InlineData("wall,strength,3 5,3 5,floats,2,0,pots", "late", "post")]
    [InlineData(",strength,3 5,3 5,floats,2,0,one", "front", "")]
    public void Read_MistakeInAFront_IsReportedAndTheFrontLeftOut(string row, string column, string nearest)
    {
        var read = Read(FrontHeader + row + "\n", null);
        var problem = Assert.Single(read.Problems);
        Assert.Equal((2, column, nearest), (problem.Place.Line, problem.Place.Column, problem.Suggestion));
        Assert.Equal(13, read.Book.Fronts.Count);
    }

    [Fact]
    public void Read_MissingColumn_IsReportedAndNothingChanges()
    {
        var read = Read(null, "front,rating\ntight,2\n");
        Assert.Equal(("F001", "scheme"), (Assert.Single(read.Problems).Rule.Code, read.Problems[0].Place.Column));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\0\0\"")]
    [InlineData("front,scheme,rating\n\"\"\"")]
    public void Read_AnyText_NeverThrows(string text)
    {
        Assert.Equal(13, Read(text, text).Book.Fronts.Count);
    }

    private static ReadFrontBook Read(string? fronts, string? ratings) =>
        FrontBookReader.Read(
            fronts is null ? null : new StringReader(fronts), ratings is null ? null : new StringReader(ratings), FrontBook.BuiltIn);
}
