using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;

namespace Tendency.Breakdown.Tests.Charts;

/// <summary>Cells as people write them. Null: not readable, and never guessed.</summary>
public class CellReaderTests
{
    [Theory]
    [InlineData("own 25", 75)]
    [InlineData("Own25", 75)]
    [InlineData("-25", 75)]
    [InlineData("\u221225", 75)]
    [InlineData("opp 8", 8)]
    [InlineData("OPP. 8", 8)]
    [InlineData("their 8", 8)]
    [InlineData("+8", 8)]
    [InlineData("50", 50)]
    [InlineData("midfield", 50)]
    [InlineData("own 25 yd", 75)]
    [InlineData("25", null)]
    [InlineData("own 0", null)]
    [InlineData("opp 51", null)]
    [InlineData("own", null)]
    [InlineData("o 25", null)]
    public void TryYardLine_AsWritten_IsReadOrRefused(string text, int? yards) =>
        Assert.Equal(yards, CellReader.TryYardLine(text, out var read) ? read : null);

    [Theory]
    [InlineData("7:42", 462)]
    [InlineData("07:42", 462)]
    [InlineData(":42", 42)]
    [InlineData("7:42:00", 462)]
    [InlineData("0:07:42", 462)]
    [InlineData("7:42:00 AM", 462)]
    [InlineData("12:42:00 AM", 42)]
    [InlineData("15:00", 900)]
    [InlineData("3:00 PM", 900)]
    [InlineData("15:01", null)]
    [InlineData("7:60", null)]
    [InlineData("7.42", null)]
    [InlineData("742", null)]
    [InlineData("7:42:13", null)]
    [InlineData("-1:00", null)]
    public void TryClock_AsWritten_IsReadOrRefused(string text, int? seconds) =>
        Assert.Equal(seconds, CellReader.TryClock(ColumnCatalogue.Find("clock")!, text, out var read) ? read : null);

    [Theory]
    [InlineData("7", 7)]
    [InlineData("7 yds", 7)]
    [InlineData("inches", 1)]
    [InlineData("½", 1)]
    [InlineData("0", null)]
    [InlineData("7.5", null)]
    [InlineData("100", null)]
    [InlineData("1e1", null)]
    [InlineData("seven", null)]
    public void TryDistance_AsWritten_IsReadOrRefused(string text, int? yards) =>
        Assert.Equal(yards, CellReader.TryDistance(ColumnCatalogue.Find("distance")!, text, out var read) ? read : null);

    [Theory]
    [InlineData("g")]
    [InlineData("Goal")]
    [InlineData("GL")]
    public void TryDistance_Goal_IsLeftToTheBall(string text)
    {
        Assert.True(CellReader.TryDistance(ColumnCatalogue.Find("distance")!, text, out var yards));
        Assert.Null(yards);
    }

    [Theory]
    [InlineData("gain", "+7", 7)]
    [InlineData("gain", "\u20133", -3)]
    [InlineData("gain", "no gain", 0)]
    [InlineData("gain", "7 yards", 7)]
    [InlineData("gain", "(3)", null)]
    [InlineData("quarter", "Q2", 2)]
    [InlineData("quarter", "4th", 4)]
    [InlineData("quarter", "OT", 5)]
    [InlineData("quarter", "6", null)]
    [InlineData("shell", "2nd", null)]
    public void TryNumber_AsWritten_IsReadOrRefused(string column, string text, int? value) =>
        Assert.Equal(value, CellReader.TryNumber(ColumnCatalogue.Find(column)!, text, out var read) ? read : null);

    [Theory]
    [InlineData("11", "11")]
    [InlineData("1", "01")]
    [InlineData("11p", "11")]
    [InlineData("2-1", "21")]
    [InlineData("33", null)]
    [InlineData("11-Dec", null)]
    [InlineData("nickel", null)]
    public void TryPersonnel_AsWritten_IsReadOrRefused(string text, string? personnel) =>
        Assert.Equal(personnel, CellReader.TryPersonnel(text, out var read) ? read : null);

    [Theory]
    [InlineData("7.0", "7")]
    [InlineData("-3,0", "-3")]
    [InlineData("1.50", "1.50")]
    [InlineData("0.0", "0")]
    [InlineData(" \u200F7\u00A0", "7")]
    public void Plain_NumberFromAnotherProgram_LosesItsDecimals(string text, string plain) =>
        Assert.Equal(plain, CellText.Plain(ColumnCatalogue.Find("gain")!, text));

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData(" =1+1", "' =1+1")]
    [InlineData("\t@SUM(A1)", "'\t@SUM(A1)")]
    [InlineData("\u200B=1", "'\u200B=1")]
    [InlineData("＝1", "'＝1")]
    [InlineData("-Infinity", "'-Infinity")]
    [InlineData("-x", "'-x")]
    [InlineData("-3", "-3")]
    [InlineData("+7", "+7")]
    [InlineData("-0.25", "-0.25")]
    [InlineData("-1.5e-7", "-1.5e-7")]
    [InlineData("a=b", "a=b")]
    [InlineData("", "")]
    public void Safe_Text_IsNoFormula(string text, string safe) => Assert.Equal(safe, FormulaText.Safe(text));
}
