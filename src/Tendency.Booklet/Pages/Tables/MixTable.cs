using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>A further column of a mix table: its head and what stands in a row, given the plays of that kind.</summary>
internal sealed record MixColumn(Column Column, Func<string, PlayLog, Cell> Cell);

/// <summary>The kinds of a mix with shares on a tick strip; the ranges hold for all rows at once.</summary>
internal static class MixTable
{
    /// <param name="study">Gives the level and the play lists.</param>
    /// <param name="head">Head of the first column: "Scheme".</param>
    /// <param name="column">What is divided: run_scheme.</param>
    /// <param name="plays">The plays divided.</param>
    /// <param name="mix">Counted from the same plays.</param>
    /// <param name="stops">Left edges: count, strip, strip width, share.</param>
    /// <param name="more">Columns after the share.</param>
    public static Table Of(Study study, string head, string column, PlayLog plays, Mix mix, MixStops stops, params MixColumn[] more)
    {
        var weighted = study.Weights.IsOn && stops.Weighted is not null;
        if (weighted)
        {
            stops = stops.Weighted! with { CountHead = stops.CountHead };
        }

        var columns = new List<Column>
        {
            new(head, 0, stops.Count - 2),
            new(stops.CountHead, stops.Count, 24, Align.Right),
            new("", stops.Strip, stops.StripWidth) { Axis = stops.StripWidth < 100 ? new StripAxis(0, mix.AxisEnd, [0, mix.AxisEnd]) : StripAxis.UpTo(mix.AxisEnd) },
            new("Share, likely", stops.Share, stops.ShareWidth),
        };
        if (weighted)
        {
            columns.Add(new Column(Weighing.Head, stops.Share + stops.ShareWidth + 6, 90) { Remark = mix.Parts is [{ Weighted: { } all }, ..] ? $"like {Weighing.Like(all.EffectivePlays)}" : "" });
        }

        columns.AddRange(more.Select(extra => extra.Column));
        var rows = mix.Parts.Select(part =>
        {
            var own = plays.Where(column, part.Value);
            return new TableRow([
                Cells.Name(Words.Title(part.Value)),
                Cells.Count(part.Share.Count),
                Cells.Strip(part.Share),
                Cells.ShareLine(part.Share, range: true),
                .. weighted ? (Cell[])[part.Weighted is { } share ? Weighing.Line(share) : Cells.Blank] : [],
                .. more.Select(extra => extra.Cell(part.Value, own))])
            { Plays = study.ListOf(own) };
        }).ToList();
        if (mix.OtherKinds > 0)
        {
            rows.Add(new TableRow(Cells.Name($"Others ({mix.OtherKinds})"), Cells.Count(mix.OtherPlays)));
        }

        return new Table(columns, rows) { Caption = $"{head} mix" };
    }

    /// <summary>Yards and the share that gained enough; none where gains are not charted.</summary>
    public static IEnumerable<MixColumn> Gains(Study study)
    {
        if (!study.Plays.IsCharted(ColumnNames.Gain))
        {
            yield break;
        }

        yield return new MixColumn(new Column("Yards", 379, 59, Align.Right), (_, plays) => Cells.Figure(Yards.Of(study, plays).Printed));
        yield return new MixColumn(new Column("Gained enough", 444, 72, Align.Right), (_, plays) => Cells.ShareLine(study.Of(plays, ColumnNames.Success, "yes")));
    }
}

/// <summary>Where the columns of a mix table stand, in points from its left edge.</summary>
internal sealed record MixStops(double Count, double Strip, double StripWidth, double Share, double ShareWidth)
{
    public string CountHead { get; init; } = "Plays";

    /// <summary>The same with room for a weighted share; null = there is none, the table stays plain.</summary>
    public MixStops? Weighted { get; init; }

    /// <summary>The whole width, with room for two more columns from 400.</summary>
    public static readonly MixStops Wide = new(104, 142, 150, 306, 80) { Weighted = new(104, 134, 62, 204, 74) };

    /// <summary>Half the width, 252 points.</summary>
    public static readonly MixStops Half = new(84, 118, 52, 178, 74);
}
