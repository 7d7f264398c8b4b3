using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Breakdown.Fronts.Options;

namespace Tendency.Booklet.Pages;

/// <summary>How often does a run ask for one man more, and who is he in each front and shell?</summary>
internal static class ExtraFitterPage
{
    private const int MostFronts = 4;
    private const int FewestRuns = 10;
    private const double ShellsFrom = 74;
    private const double ShellWidth = 88;

    public static Page? Compose(Study study)
    {
        if (study.Fronts is not { } check || check.Ranking.Ranks.Count == 0)
        {
            return null;
        }

        var shares = OptionShare.Of(study.Plays, check.Sample, study.Level);
        if (shares.Count == 0)
        {
            return null;
        }

        Front[] fronts = [.. check.Ranking.Ranks.Take(MostFronts).Select(rank => check.Matrix.Fronts.First(front => front.Name == rank.Front))];
        return new Page("extra-fitter", "Extra fitter", Finding(shares))
        {
            Deck = "A read, bash or option gives the quarterback or a pitch a gap of his own. A throw off a run adds no gap and takes one of our men out of the fit.",
            Blocks =
            [
                new Heading("How often", $"of the runs with a charted scheme, in situations with {FewestRuns} of them or more"),
                Shares(shares),
                new Heading("Who has the quarterback when the backside end is read", "the man, and when; then spare men on that side, at the snap and late; the four fronts that allow least"),
                Fitters(OptionFitter.Of(fronts, FrontBook.BuiltIn, OptionFitter.UsualSurface(check.Sample))),
                .. Support(check, fronts),
                Paragraph.Note("Two-deep: the outside safeties read the second receiver, the middle one is free. Invert: an outside safety drops to overhang at once. Cloud: the corner forces. Buzz: the middle safety is a linebacker at once. Man free: the overhang has a man, the middle safety can add. Fronts without three high safeties have one shell. The count is of men; angles are rated in the front check."),
            ],
        };
    }

    private static string Finding(IReadOnlyList<OptionShare> shares)
    {
        var all = shares.Where(share => share.Situation == shares[0].Situation).ToDictionary(share => share.Kind);
        var (runs, held) = (all[OptionKind.Rpo].Runs, all[OptionKind.Rpo].Count);
        var more = all.Values.Sum(share => share.Count) - held;
        return Headline.Of($"{Figures.CountOf(more, runs)} runs need an extra man.", $"{Figures.CountOf(held, runs)} hold one of ours with a throw.");
    }

    private static Table Shares(IReadOnlyList<OptionShare> shares)
    {
        var columns = new List<Column> { new("Situation", 0, 130), new("Runs", 132, 34, Align.Right) };
        columns.AddRange(OptionKinds.All.Select((kind, i) => new Column(Title(kind), 184 + (i * 84), 80)));
        return new Table(columns, [.. shares.GroupBy(share => share.Situation).Where((situation, i) => i == 0 || situation.First().Runs >= FewestRuns).Select((situation, i) => new TableRow([
            Cells.Name(Words.Title(situation.Key)),
            Cells.Count(situation.First().Runs),
            .. OptionKinds.All.Select(kind => new ShareCell(ShareOf(situation.First(share => share.Kind == kind))) { Form = i == 0 ? ShareForm.Stacked : ShareForm.PercentAndCount })])
        { Kind = i == 0 ? RowKind.Total : RowKind.Plain })])
        { Caption = "Runs that ask for one man more" };
    }

    private static Share ShareOf(OptionShare share) => new(share.Count, share.Runs, share.Range, null);

    private static string Title(OptionKind kind) => kind switch
    {
        OptionKind.Read => "Read",
        OptionKind.Bash => "Bash",
        OptionKind.Option => "Pitch, 2nd key",
        _ => "Throw off a man",
    };

    private static Table Fitters(IReadOnlyList<OptionFitter> fitters) => ByShell(
        "Who has the quarterback",
        fitters.GroupBy(fitter => fitter.Front).Select(front => (front.Key, $"reads the {front.First().ReadMan}", front.ToDictionary(
            fitter => fitter.Shell,
            fitter => Cells.Text(
                fitter.Keep.Length == 0 ? RichText.Strong("Nobody") : Words.Capital(fitter.Keep),
                $"{(fitter.Keep.Length == 0 ? "" : fitter.KeepIsLate ? "late; " : "at the snap; ")}{Spare(fitter.Ledger.Back)}")))));

    /// <summary>What the shells change against their commonest run from a charted surface; nothing where none is charted.</summary>
    private static IEnumerable<Block> Support(FrontCheck check, IReadOnlyList<Front> fronts)
    {
        if (check.Matrix.Mix.Charted.FirstOrDefault(cell => cell.Surface is not null) is not { Surface: { } surface } run)
        {
            yield break;
        }

        var look = surface with { RunTo = run.Side };
        yield return new Heading($"What the shell changes against {Words.Plain(run.Scheme.Name)} {run.Side.Word()}", $"their commonest, {Figures.CountOf(check.Sample.Runs.Count(charted => charted.Scheme == run.Scheme && charted.RunTo == run.Side), check.Sample.Runs.Count)} runs; spare men to the play and in all, at the snap and late");
        yield return ByShell("Spare men by shell", fronts.Select(front => (front.Name, front.HasThreeSafeties ? "" : "its one shell", Ledgers(front, run, look).ToDictionary(
            ledger => ledger.Shell,
            ledger => Cells.Text($"play {Spare(ledger.Ledger.Play)}", $"all {Spare(ledger.Ledger.All)}")))));
    }

    private static IReadOnlyList<ShellSupport> Ledgers(Front front, MixCell run, Surface look) => front.HasThreeSafeties
        ? ShellSupport.Of(front, run.Scheme, look, run.Tag)
        : [new ShellSupport(front.Name, run.Scheme.Name, Shell.TwoDeep, GapLedger.Of(front, run.Scheme, look, run.Tag))];

    private static Table ByShell(string caption, IEnumerable<(string Front, string Remark, Dictionary<Shell, Cell> ByShell)> rows)
    {
        var shells = Enum.GetValues<Shell>();
        var columns = new List<Column> { new("Front", 0, ShellsFrom) };
        columns.AddRange(shells.Select((shell, i) => new Column(Words.Title(shell.Word()), ShellsFrom + 4 + (i * ShellWidth), ShellWidth - 4)));
        return new Table(columns, [.. rows.Select(row => new TableRow([
            Cells.Name(Words.Title(row.Front), row.Remark),
            .. shells.Select(shell => row.ByShell.GetValueOrDefault(shell) ?? Cells.Blank)]))])
        { Caption = caption };
    }

    private static string Spare(FlankCount count) => $"{Figures.Signed(count.SpareNow, 0)}/{Figures.Signed(count.SpareLate, 0)}";
}
