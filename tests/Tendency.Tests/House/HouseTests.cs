using System.Text.RegularExpressions;
using Tendency.Tests.Shared;

namespace Tendency.Tests.House;

/// <summary>The rules of the house that the compiler can not hold.</summary>
public partial class HouseTests
{
    // A folder may use those before it. In Breakdown that is the order the data moves in.
    [Theory]
    [InlineData("Tendency.Inference", "Functions Intervals Comparisons Information Multiplicity Shrinkage Clusters Scores Forecasts Agreement Games")]
    [InlineData("Tendency.Breakdown", "Problems Weeks Glossaries Charts Situations Audits Counts Findings Fronts")]
    [InlineData("Tendency.Booklet", "Blocks Lettering Marks Plots Pdf Html Pages")]
    [InlineData("Tendency", "Files Input Output Commands")]
    public void Folders_UseOnlyThoseBeforeThem(string project, string folderOrder)
    {
        var order = folderOrder.Split(' ');
        var folders = Directory.EnumerateDirectories(Path.Combine(Checkout.Root, "src", project)).Select(Path.GetFileName).Except(["bin", "obj"]);
        Assert.Empty(folders.Except(order));

        var upward =
            from file in Repository.Sources($"src/{project}")
            let folder = Array.IndexOf(order, file.Split('/')[2])
            from line in Repository.Lines(file).Index()
            let used = Regex.Match(line.Item, $@"{Regex.Escape(project)}\.(\w+)")
            where used.Success && Array.IndexOf(order, used.Groups[1].Value) > folder && folder >= 0
            select $"{file}({line.Index + 1}): {order[folder]} may not use {used.Groups[1].Value}";
        AssertNone(upward);
    }

    // Counted, said, shown, then whole pages of several kinds. The pages in the folder itself come last and may use all of them; what they are made from comes first.
    [Fact]
    public void FoldersOfPages_UseOnlyThoseBeforeThem()
    {
        const string root = "src/Tendency.Booklet/Pages";
        string[] first = ["OwnColumns", "Study", "PageEntry"];
        string[] order = ["Counting", "Wording", "Tables", "Pictures", "Cards", "Brief", "Defenses", "Sheets", "Scripts", "SelfScouts"];
        Assert.Empty(Directory.EnumerateDirectories(Path.Combine(Checkout.Root, root)).Select(Path.GetFileName).Except(order));

        static string Place(string file) => file.Split('/') is [_, _, _, var folder, _, ..] ? folder : Path.GetFileNameWithoutExtension(file);
        var files = Repository.Sources(root).ToArray();
        string[] places = [.. first, .. order, .. files.Select(Place).Except(first).Except(order)];
        var last = string.Join('|', places[(first.Length + order.Length)..]);
        var among = string.Join('|', order);
        var names = new Regex($@"Pages\.(?<used>{among})\b|(?<![\w.])(?<used>{among})(?=\.[A-Z])|(?<![\w.])(?<used>{last})\b");
        var upward =
            from file in files
            let place = Array.IndexOf(places, Place(file))
            where place < first.Length + order.Length
            from line in Repository.Lines(file).Index()
            from use in names.Matches(line.Item)
            let used = use.Groups["used"].Value
            where Array.IndexOf(places, used) > place
            select $"{file}({line.Index + 1}): {places[place]} may not use {used}";
        AssertNone(upward);
    }

    // A page that made its own range could forget that plays come in games.
    [Fact]
    public void Pages_LeaveEveryRangeToOnePlace()
    {
        var made =
            from file in Repository.Sources("src/Tendency.Booklet/Pages")
            where file != "src/Tendency.Booklet/Pages/Counting/Shares.cs"
            from line in Repository.Lines(file).Index()
            where OwnRange().IsMatch(line.Item)
            select $"{file}({line.Index + 1}): ask the study for the range: {line.Item.Trim()}";
        AssertNone(made);
    }

    [Fact]
    public void Files_HaveAtMost400Lines() =>
        Assert.Empty(Repository.Sources("src").Concat(Repository.Sources("tests")).Where(file => Repository.Lines(file).Length > 400));

    [Fact]
    public void TypeNames_SayWhatTheThingIs()
    {
        var vague =
            from file in Repository.Sources("src")
            from line in Repository.Lines(file)
            let type = TypeName().Match(line)
            where type.Success && VagueName().IsMatch(type.Groups[1].Value)
            select $"{file}: {type.Groups[1].Value}";
        AssertNone(vague);
    }

    [Theory]
    [InlineData("Tendency.Inference")]
    [InlineData("Tendency.Breakdown")]
    [InlineData("Tendency.Booklet")]
    [InlineData("Tendency")]
    public void TypeNames_MeanOneThingInAProject(string project)
    {
        var twice = Repository.Sources($"src/{project}")
            .SelectMany(file => Repository.Lines(file).Where(line => !line.StartsWith(' ')).Select(line => TypeName().Match(line)).Where(type => type.Success)
                .Select(type => (Name: type.Groups[1].Value, File: file)))
            .Distinct()
            .GroupBy(type => type.Name, StringComparer.Ordinal)
            .Where(types => types.Count() > 1)
            .Select(types => string.Join(" and ", types.Select(type => type.File)) + $": {types.Key}");
        AssertNone(twice);
    }

    [Fact]
    public void Libraries_TouchNoFileNoConsoleNoClock()
    {
        var touching =
            from file in Repository.Sources("src").Where(file => !file.StartsWith("src/Tendency/", StringComparison.Ordinal))
            from line in Repository.Lines(file).Index()
            where Outside().IsMatch(line.Item) && !line.Item.TrimStart().StartsWith("//", StringComparison.Ordinal)
            select $"{file}({line.Index + 1}): {line.Item.Trim()}";
        AssertNone(touching);
    }

    [Fact]
    public void OnlyTheBooklet_NamesDrawingLibraries()
    {
        var naming = Repository.Sources("src")
            .Where(file => !file.StartsWith("src/Tendency.Booklet/", StringComparison.Ordinal) || file.StartsWith("src/Tendency.Booklet/Blocks/", StringComparison.Ordinal) || file.StartsWith("src/Tendency.Booklet/Pages/", StringComparison.Ordinal))
            .Where(file => Repository.Lines(file).Any(line => line.StartsWith("using SkiaSharp", StringComparison.Ordinal) || line.StartsWith("using ScottPlot", StringComparison.Ordinal)));
        AssertNone(naming);
    }

    // In full: a collection's own message cuts each line short.
    private static void AssertNone(IEnumerable<string> faults)
    {
        var found = string.Join('\n', faults);
        Assert.True(found.Length == 0, found);
    }

    [GeneratedRegex(@"^\s*(?:(?:public|internal|private|protected|static|sealed|abstract|partial|readonly)\s+)*(?:class|record(?:\s+struct)?|struct|interface|enum)\s+(\w+)")]
    private static partial Regex TypeName();

    [GeneratedRegex(@"\b(OneProportion|Simultaneous|Difference)\.\w|\bEstimate\.Of\b|\b[Tt]ell\.Range\b")]
    private static partial Regex OwnRange();

    [GeneratedRegex(@"(Manager|Helper|Helpers|Util|Utils|Utility|Service|Processor|Data|Info|Impl)$")]
    private static partial Regex VagueName();

    [GeneratedRegex(@"\b(File\.(Open|Read|Write|Exists|Create)|Directory\.|Console\.|DateTime(Offset)?\.(Now|UtcNow|Today)|Environment\.(Get|Exit|Current)|Guid\.NewGuid|new Random\(\))")]
    private static partial Regex Outside();
}
