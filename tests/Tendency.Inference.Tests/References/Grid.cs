namespace Tendency.Inference.Tests.References;

/// <summary>A reference table computed in R or at 50 digits (its first lines say by what); "NA" reads as not a number.</summary>
internal static class Grid
{
    public static List<GridRow> Read(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "References", name + ".csv")).Where(line => !line.StartsWith('#')).ToList();
        var header = lines[0].Split(',');
        List<GridRow> rows = [.. lines.Skip(1).Where(line => line.Length > 0).Select(line => new GridRow(header, line.Split(',')))];
        Assert.NotEmpty(rows);
        return rows;
    }

    /// <summary>The rows that share a case number, in file order.</summary>
    public static IEnumerable<List<GridRow>> ReadCases(string name) => Read(name).GroupBy(row => row["case"]).Select(rows => rows.ToList());
}
