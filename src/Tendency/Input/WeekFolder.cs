using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.Files;

namespace Tendency.Input;

/// <summary>The week file and what stands beside it: the staff's own words.</summary>
/// <param name="Folder">The week file's folder; null without a week file.</param>
/// <param name="Plan">What the staff says; the defaults without a week file.</param>
/// <param name="Glossary">The words of the trade and of the staff.</param>
/// <param name="Problems">What is wrong in these files.</param>
internal sealed record WeekFolder(string? Folder, WeekPlan Plan, Glossary Glossary, IReadOnlyList<Problem> Problems)
{
    public static WeekFolder Open(Request request)
    {
        return ChartPaths.WeekFile(request) is { } file ? Open(file) : new WeekFolder(null, WeekPlan.Default, Glossary.BuiltIn, []);
    }

    /// <param name="file">A week file.</param>
    public static WeekFolder Open(string file)
    {
        if (!File.Exists(file))
        {
            throw new CommandException($"{file}: no such file.");
        }

        var names = new KnownNames([.. ColumnCatalogue.All.Select(c => c.Name)], DimensionNames.All);
        var reading = WeekReader.Read(Path.GetFileName(file), InputFiles.Text(file), names);
        var problems = reading.Problems.ToList();
        var folder = Path.GetDirectoryName(Path.GetFullPath(file))!;
        return new WeekFolder(folder, reading.Plan, GlossaryOf(folder, reading.Plan, problems), problems);
    }

    /// <summary>Opens a file that the week file names; null when it names none.</summary>
    public Stream? OpenBeside(string name) => name.Length == 0 || Folder is null ? null : OpenBeside(Folder, name);

    private static Glossary GlossaryOf(string folder, WeekPlan plan, List<Problem> problems)
    {
        if (plan.GlossaryFile.Length == 0)
        {
            return Glossary.BuiltIn;
        }

        using var stream = OpenBeside(folder, plan.GlossaryFile);
        return GlossaryReader.Read(plan.GlossaryFile, stream, problems);
    }

    private static Stream OpenBeside(string folder, string name)
    {
        var file = Path.Combine(folder, name);
        return File.Exists(file) ? InputFiles.Open(FolderBounds.Inside(folder, file)) : throw new CommandException($"{file}: week.toml names this file, but it is not there.");
    }
}
