using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Input;

/// <summary>The first stages of every command: the week's charts read, their dimensions derived.</summary>
/// <param name="Week">The staff's plan, with the level the user asked for.</param>
/// <param name="Glossary">The words of the trade and the staff.</param>
/// <param name="Read">Every row and every problem.</param>
/// <param name="Log">All readable snaps with derived columns.</param>
internal sealed record ChartedWeek(WeekPlan Week, Glossary Glossary, ReadLog Read, PlayLog Log)
{
    public IReadOnlyList<Problem> Problems => Read.Problems;

    public static ChartedWeek From(Request request)
    {
        var week = WeekPlan.Default with { Level = request.Level ?? WeekPlan.Default.Level };
        var glossary = Glossary.BuiltIn;
        var sources = ChartPaths.Sources(request.Charts, [.. week.Charts.Select(c => c.File)], [week.GlossaryFile, week.CorrectionsFile]);
        var read = ChartReader.Read(sources, week, glossary);
        return new ChartedWeek(week, glossary, read, DerivedColumns.AddTo(read.Plays, week, glossary));
    }

    /// <summary>The plays that count. Ends the command when there is no readable play, or no telling whose plays are meant.</summary>
    public StudiedPlays Choose(Request request, Unit unit = Unit.Offense)
    {
        if (Log.Rows == 0)
        {
            ProblemReport.Write(this, null, quiet: false);
            throw new CommandException("No readable play in the charts.");
        }

        var studied = StudiedPlays.Choose(Log, Week, request.Only, unit, out var problem);
        if (studied is null)
        {
            ProblemReport.Write(this, null, quiet: true);
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
}
