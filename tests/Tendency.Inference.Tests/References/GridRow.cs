using System.Globalization;

namespace Tendency.Inference.Tests.References;

/// <summary>One row of a reference table, and the comparisons the tables ask for; a failure names the row.</summary>
internal sealed class GridRow(string[] header, string[] fields)
{
    public string this[string column] => fields[Column(column)];

    public double Number(string column) => Parse(this[column]);

    public int Integer(string column) => int.Parse(this[column], CultureInfo.InvariantCulture);

    public double[] Numbers(string column) => [.. this[column].Split(' ').Select(Parse)];

    public int[] Integers(string column) => [.. this[column].Split(' ').Select(text => int.Parse(text, CultureInfo.InvariantCulture))];

    public void Absolute(string column, double actual, double tolerance) =>
        Compare(column, actual, expected => Math.Abs(actual - expected) <= tolerance);

    public void Relative(string column, double actual, double tolerance, double absolute = 0) =>
        Compare(column, actual, expected => Math.Abs(actual - expected) <= Math.Max(absolute, tolerance * Math.Abs(expected)));

    private static double Parse(string text) => text switch
    {
        "NA" => double.NaN,
        "Infinity" => double.PositiveInfinity,
        _ => double.Parse(text, CultureInfo.InvariantCulture),
    };

    private void Compare(string column, double actual, Func<double, bool> close)
    {
        var expected = Number(column);
        var same = double.IsNaN(expected) ? double.IsNaN(actual) : actual.Equals(expected) || close(expected);
        Assert.True(same, $"{column}: expected {expected:R}, got {actual:R} in row {string.Join(',', fields)}");
    }

    private int Column(string name)
    {
        var index = Array.IndexOf(header, name);
        return index >= 0 ? index : throw new ArgumentException($"No column {name} in {string.Join(',', header)}.");
    }
}
