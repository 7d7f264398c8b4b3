using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.SampleCharts;

namespace Tendency.Tests.Briefs;

/// <summary>
/// The printed brief of seasons nobody tuned it on, its words taken from the PDF and every count in them made again from the chart's rows
/// by other code: what it says is what was charted, and no sentence says more than its range does.
/// </summary>
public partial class BriefRecountTests
{
    public static TheoryData<string> Seasons =>
    [
        "halden 11", "halden 12", "halden 13", "halden 14",
        "coin 21", "coin 22", "runs 31", "passes 32", "tells 41", "tells 42", "tells 43",
    ];

    [Theory]
    [MemberData(nameof(Seasons))]
    public void Brief_HeldBackSeason_EveryCountAndHedgeIsTheRecounts(string season)
    {
        var charts = Charts(season);
        var rows = RecountedPlay.Of(charts);
        var text = Printed(charts);
        var recount = new BriefRecount(rows);
        var counted = 0;

        foreach (Match figure in KeyFigure().Matches(text))
        {
            recount.CheckFigure(figure.Groups["label"].Value, Share(figure));
            counted++;
        }

        Assert.InRange(counted, 4, 5);
        var claims = Claim().Matches(text);
        foreach (Match claim in claims)
        {
            recount.CheckClaim(claim.Groups["sentence"].Value, Share(claim), claim.Groups["support"].Value);
            counted++;
        }

        string[] numbers = ["", "in one sentence", "in two sentences", "in three sentences", "in four sentences", "in five sentences"];
        Assert.True(text.Contains(claims.Count > 0 ? $"What they do, {numbers[claims.Count]}" : "No habit stands out in", StringComparison.Ordinal), text);
        Assert.Equal(recount.CouldBeLuck(claims.Select(claim => claim.Groups["sentence"].Value), Tried(text)), Luck().Match(text).Groups["which"].Value);
        foreach (Match filled in Filled().Matches(text))
        {
            Assert.Equal(recount.Filled(filled.Groups["column"].Value), (Number(filled.Groups["k"].Value), Number(filled.Groups["n"].Value)));
            counted++;
        }

        var read = Read().Match(text);
        Assert.Equal((rows.Count(row => row.IsCounted), rows.Count), (Number(read.Groups["used"].Value), Number(read.Groups["rows"].Value)));

        // Nothing was passed over: the other "k of n" are games and re-draws.
        Assert.Equal(counted, Count().Count(text));
    }

    private static string[] Charts(string season)
    {
        var (kind, seed) = season.Split(' ') is [var word, var number] ? (word, ulong.Parse(number, CultureInfo.InvariantCulture)) : ("", 0);
        return kind == "halden"
            ? [.. SampleFiles.Sheets(SampleSets.PortHaldenSeason(seed)).Select(sheet => sheet.ToText())]
            : [Scenario.Generate(seed, 5, kind switch
            {
                "runs" => new ScenarioOptions { RunShare = .8 },
                "passes" => new ScenarioOptions { RunShare = .25, GameSwing = .5 },
                "tells" => new ScenarioOptions { Tells = Scenario.DrawTells(seed, 5, 3, lowLogOdds: 2, highLogOdds: 3) },
                _ => new ScenarioOptions(),
            }).ToText()];
    }

    /// <summary>Words of the brief's first page, every run of white space a space.</summary>
    private static string Printed(string[] charts)
    {
        var week = WeekPlan.Default;
        var read = ChartReader.Read([.. charts.Select((chart, i) => new ChartSource($"{i}.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(chart))))], week, Glossary.BuiltIn);
        var all = DerivedColumns.AddTo(read.Plays, week, Glossary.BuiltIn);
        var chosen = StudiedPlays.Choose(all, week, [], Unit.Offense, out _)!;
        var check = FrontCheck.Of(chosen.Plays, FrontBook.BuiltIn, [.. FrontBook.BuiltIn.Fronts.Take(4)], new FrontOptions { Draws = 300 });
        var booklet = BookletOrder.Compose(new Study(chosen, all, read, week) { Fronts = check }, DateTimeOffset.UnixEpoch, ["brief"]);
        using var pdf = new MemoryStream();
        _ = PdfPrinter.Print(booklet, PaperSize.Letter, pdf);
        return WhiteSpace().Replace(PdfCheck.Inspect(pdf).Pages[0].Text, " ");
    }

    private static PrintedShare Share(Match match) => new(
        Number(match.Groups["percent"].Value), Number(match.Groups["k"].Value), Number(match.Groups["n"].Value), match.Groups["low"].Value, match.Groups["high"].Value);

    // Without the note every sentence passed; these charts have at least so many places.
    private const int FewestPlaces = 40;

    private static int Tried(string text) => Looked().Match(text) is { Success: true } looked ? Number(looked.Groups["tried"].Value) : FewestPlaces;

    private static int Number(string digits) => int.Parse(digits, NumberStyles.AllowThousands, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();

    [GeneratedRegex(@"(?<label>Run share|Gained enough|Long plays, 12\+ / 16\+|Third downs converted|Red zone plays run|First downs run) (?<percent>\d+)% (?<k>[\d,]+) of (?<n>[\d,]+) (?<low>[\d<]+)–(?<high>[\d>]+)%")]
    private static partial Regex KeyFigure();

    [GeneratedRegex(@"(?<=\d )(?<sentence>[A-Z][^.%]*\.) (?<percent>\d+)% \((?<k>[\d,]+) of (?<n>[\d,]+) [a-z, ]+; likely (?<low>[\d<]+)–(?<high>[\d>]+)%\)\. (?<support>(?:So in [^.]*\. )?(?:Most: [^.]*\. ?)?)")]
    private static partial Regex Claim();

    [GeneratedRegex(@"(?<tried>[\d,]+) situations and directions were looked at")]
    private static partial Regex Looked();

    [GeneratedRegex(@"sentences? (?<which>[\d, and]+) could be luck")]
    private static partial Regex Luck();

    [GeneratedRegex(@"Least filled: (?<column>[a-z ]+), (?<k>[\d,]+) of (?<n>[\d,]+)")]
    private static partial Regex Filled();

    [GeneratedRegex(@"(?<used>[\d,]+) plays counted of (?<rows>[\d,]+) rows read")]
    private static partial Regex Read();

    [GeneratedRegex(@"\d of [\d,]+(?! (?:re-draws|games)|[\d,])")]
    private static partial Regex Count();
}
