using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.Files;

namespace Tendency.Input;

/// <summary>The first stages of every command: the week's charts read, their dimensions derived.</summary>
/// <param name="Folder">The week file and what stands beside it.</param>
/// <param name="Week">The staff's plan, with the level the user asked for.</param>
/// <param name="Read">Every row and every problem.</param>
/// <param name="Log">All readable snaps with derived columns.</param>
internal sealed record ChartedWeek(WeekFolder Folder, WeekPlan Week, ReadLog Read, PlayLog Log)
{
    public static ChartedWeek From(Request request)
    {
        var folder = WeekFolder.Open(request);
        var week = request.Level is double level ? folder.Plan with { Level = level } : folder.Plan;
        var charts = week.Charts.OrderBy(c => c.Date ?? DateOnly.MinValue).Select(c => c.File);
        var sources = ChartPaths.Sources(request.Charts, [.. charts], [week.GlossaryFile, week.CorrectionsFile, week.FrontsFile, week.RatingsFile]);
        var problems = new List<Problem>();
        var options = new ReadingOptions { SheetName = request.Sheet ?? "", Corrections = Corrections(request, folder, problems) };
        var read = ChartReader.Read(sources, week, folder.Glossary, options);
        RowAccount.Read(new RowTally(read.RowsRead, 0, read.RowsLeftOut + read.Plays.Rows, read.RowsSetAside));

        // Said before the work rather than after it.
        OutputFile.Check(request.Output);
        return new ChartedWeek(folder, week, read, DerivedColumns.AddTo(read.Plays, week, folder.Glossary)).With(problems.Concat(FrontPlan.Open(folder).Problems));
    }

    /// <summary>What is wrong with the week's files and with the charts.</summary>
    public IReadOnlyList<Problem> Problems => [.. Folder.Problems, .. Read.Problems];

    /// <summary>The same week with problems that a later stage found in its files.</summary>
    public ChartedWeek With(IEnumerable<Problem> problems) => this with { Folder = Folder with { Problems = [.. Folder.Problems, .. problems] } };

    public Glossary Glossary => Folder.Glossary;

    /// <summary>The plays that count. Ends the command when there is no readable play, or no telling whose plays are meant.</summary>
    public StudiedPlays Choose(Request request, Unit? unit = null)
    {
        if (Log.Rows == 0)
        {
            _ = ProblemReport.Write(Problems);
            throw new CommandException("No readable play in the charts.");
        }

        var studied = StudiedPlays.Choose(Log, Week, request.Only, unit, out var problem);
        if (studied is null)
        {
            throw new CommandException(problem);
        }

        return studied;
    }

    /// <summary>What became of every row.</summary>
    public RowTally Rows(StudiedPlays? studied)
    {
        var used = studied?.Plays.Rows ?? 0;
        return new RowTally(Read.RowsRead, used, Read.RowsLeftOut + Log.Rows - used, Read.RowsSetAside);
    }

    private static IReadOnlyList<Correction> Corrections(Request request, WeekFolder folder, List<Problem> problems)
    {
        if (request.Corrections is { } named)
        {
            return File.Exists(named)
                ? CorrectionsReader.Read(new ChartSource(Path.GetFileName(named), () => InputFiles.Open(named)), problems)
                : throw new CommandException($"--corrections {named}: no such file.");
        }

        var beside = folder.Plan.CorrectionsFile;
        return beside.Length == 0 ? [] : CorrectionsReader.Read(new ChartSource(beside, () => folder.OpenBeside(beside)!), problems);
    }
}
