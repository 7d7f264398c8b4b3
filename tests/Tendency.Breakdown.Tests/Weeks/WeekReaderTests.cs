using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Weeks;

public class WeekReaderTests
{
    [Fact]
    public void Read_EveryKey_IsInThePlan()
    {
        var reading = Read("""
            opponent = "Port Halden"
            subject = "Halden"
            level = 0.9
            half_life = 2.5
            like_our_defense = true
            rpo = "own class"
            glossary = "words.csv"
            corrections = "corrections.csv"

            [[charts]]
            file = "01.csv"
            game = "Calder Bay"
            date = 2026-10-24
            tags = ["other quarterback", "rain"]

            [[charts]]
            file = "02.csv"
            date = "2026-10-31"
            tags = "snow"

            [headers]
            ball_on = "Yd Line"
            "down" = "Dn"

            [boundaries]
            short_most = 2
            two_scores = 10

            [[leave_out]]
            why = "decided"
            quarter = 4
            margin_beyond = 24

            [[leave_out]]
            tempo = ["hurry", "fast"]
            down = 4

            [plan]
            fronts = ["tight", "over"]
            fronts_file = "fronts.csv"
            ratings_file = "ratings.csv"
            prior_plays = 12
            rating_step = 0.05
            rush_step = 0.01
            """);

        Assert.Empty(reading.Problems);
        var plan = reading.Plan;
        Assert.Equal(("Port Halden", "Halden", 0.9, 2.5, RpoCounting.OwnClass), (plan.Opponent, plan.Subject, plan.Level, plan.HalfLifeGames, plan.Rpo));
        Assert.Equal((true, 5), (plan.LikeOurDefense, plan.LikeOurDefenseLine));
        Assert.Equal(("words.csv", "corrections.csv", "fronts.csv", "ratings.csv"), (plan.GlossaryFile, plan.CorrectionsFile, plan.FrontsFile, plan.RatingsFile));
        Assert.Equal((12.0, 0.05, 0.01), (plan.PriorPlays, plan.RatingStep, plan.RushStep));
        Assert.Equal(["tight", "over"], plan.Fronts);
        Assert.Equal([new DateOnly(2026, 10, 24), new DateOnly(2026, 10, 31)], plan.Charts.Select(chart => chart.Date));
        Assert.Equal(["other quarterback", "rain", "snow"], plan.Charts.SelectMany(chart => chart.Tags));
        Assert.Equal(("Yd Line", "Dn"), (plan.Headers["ball_on"], plan.Headers["down"]));
        Assert.Equal(new Boundaries { ShortMost = 2, TwoScores = 10 }, plan.Boundaries);
        Assert.Equal((4, 24, "decided"), (plan.LeaveOut[0].Quarter, plan.LeaveOut[0].MarginBeyond, plan.LeaveOut[0].Why));
        Assert.Equal(["hurry", "fast"], plan.LeaveOut[1].Values["tempo"]);
        Assert.Equal(["4"], plan.LeaveOut[1].Values["down"]);
        Assert.Equal("down 4 and tempo hurry or fast", plan.LeaveOut[1].Why);
    }

    [Theory]
    [InlineData("oponent = \"A\"", "T051", 1, 1, "opponent")]
    [InlineData("level = 0.95\n  subjct = \"A\"", "T051", 2, 3, "subject")]
    [InlineData("level = 95", "T052", 1, 9, "")]
    [InlineData("level = 1", "T052", 1, 9, "")]
    [InlineData("rpo = \"by resutl\"", "T052", 1, 7, "\"by result\"")]
    [InlineData("like_our_defence = true", "T051", 1, 1, "like_our_defense")]
    [InlineData("[plan]\nfronts = [\"over\"]\nlike_our_defense = true", "T051", 3, 1, "")]
    [InlineData("level = 0.9\nlike_our_defense = \"yes\"", "T052", 2, 20, "")]
    [InlineData("level = 0.9\nlike_our_defense = true", "T055", 2, 1, "fronts = [\"over\", \"under\"] under [plan]")]
    [InlineData("[plans]\nfronts = [\"tight\"]", "T051", 1, 1, "plan")]
    [InlineData("[[chart]]\nfile = \"a.csv\"", "T051", 1, 1, "charts")]
    [InlineData("[boundaries]\nmedum_most = 5", "T051", 2, 1, "medium_most")]
    [InlineData("[boundaries]\nmedium_most = 3", "T054", 2, 1, "")]
    [InlineData("[boundaries]\nshort_most = 0", "T052", 2, 14, "")]
    [InlineData("[headers]\n\"Dn\" = \"down\"", "T051", 2, 1, "down = \"Dn\"")]
    [InlineData("[headers]\nbal_on = \"Yd\"", "T051", 2, 1, "ball_on")]
    [InlineData("[headers]\ndown = \"Dn\"\nplay = \"Dn\"", "T056", 3, 1, "")]
    [InlineData("[[charts]]\ngame = \"A\"", "T055", 1, 1, "file = \"name.csv\"")]
    [InlineData("[[charts]]\nfile = \"a.csv\"\n[[charts]]\nfile = \"a.csv\"", "T056", 4, 1, "")]
    [InlineData("[[charts]]\nfile = \"a.csv\"\ndate = 2026-10-24T10:00:00Z", "T052", 3, 8, "")]
    [InlineData("[[charts]]\nfile = \"../a.csv\"", "T053", 2, 1, "")]
    [InlineData("[[charts]]\nfile = \"/etc/passwd\"", "T053", 2, 1, "")]
    [InlineData("[[charts]]\nfile = 'C:\\a.csv'", "T053", 2, 1, "")]
    [InlineData("[[charts]]\nfile = 'a\\..\\..\\b.csv'", "T053", 2, 1, "")]
    [InlineData("glossary = \"~/words.csv\"", "T053", 1, 1, "")]
    [InlineData("[[leave_out]]\nwhy = \"x\"", "T055", 1, 1, "margin_beyond = 24")]
    [InlineData("[[leave_out]]\nmargin_beyon = 24", "T051", 2, 1, "margin_beyond")]
    [InlineData("charts = \"a.csv\"", "T052", 1, 1, "[[charts]]")]
    public void Read_Mistake_IsReportedWithLineColumnAndNearest(string text, string code, int line, int column, string suggestion)
    {
        var problem = Read(text).Problems.First(p => p.Rule.Code == code);

        Assert.Equal((line, column, suggestion), (problem.Place.Line, problem.Place.Character, problem.Suggestion));
        Assert.Contains($"Line {line}, column {column}:", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BrokenLines_CostOnlyThemselves()
    {
        var reading = Read("opponent = \"Port Halden\"\nsubject = Port Halden\nlevel = 0.9\nlevel = 0.8\n[[charts]]\nfile = \"a.csv\"\ndate = 24.10.2026\n[[charts]\nfile = \"b.csv\"\n[headers]\ndown = \"Dn\nplay = \"No\"\n");

        Assert.Equal([2, 4, 7, 8, 11], reading.Problems.Select(problem => problem.Place.Line));
        Assert.Equal("Port Halden", reading.Plan.Opponent);
        Assert.Equal(0.9, reading.Plan.Level);
        Assert.Equal(["a.csv"], reading.Plan.Charts.Select(chart => chart.File));
        Assert.Equal("No", reading.Plan.Headers["play"]);
        Assert.Equal("subject = \"Port Halden\"", reading.Problems[0].Suggestion);
        Assert.Equal(["T050", "T056", "T050", "T050", "T050"], reading.Problems.Select(problem => problem.Rule.Code));
    }

    [Fact]
    public void Read_LikeOurDefenseOff_NeedsNoFronts() => Assert.Empty(Read("like_our_defense = false").Problems);

    [Fact]
    public void Read_DottedKey_IsTheTablesKey() => Assert.Equal(12, Read("plan.prior_plays = 12").Plan.PriorPlays);

    [Fact]
    public void Read_LeaveOutWithAnInvalidCondition_LeavesNothingOut() =>
        Assert.Empty(Read("[[leave_out]]\nquarter = 4\nmargin_beyond = \"24\"").Plan.LeaveOut);

    [Theory]
    [InlineData("charts = [{ file = \"a.csv\" }, { file = \"b.csv\" }]")]
    [InlineData("[[charts]]\nfile = \"a.csv\"\n[[charts]]\nfile = \"b.csv\"")]
    public void Read_ChartsInEitherSpelling_AreTheSame(string text) =>
        Assert.Equal(["a.csv", "b.csv"], Read(text).Plan.Charts.Select(chart => chart.File));

    [Fact]
    public void All_BoundaryKeys_CoverEveryBoundaryWithItsUsualValue()
    {
        var usual = new Boundaries();
        var properties = typeof(Boundaries).GetProperties().Where(p => p.PropertyType == typeof(int)).ToArray();
        Assert.Equal(
            properties.Select(p => string.Concat(p.Name.Select((c, i) => (i > 0 && char.IsUpper(c) ? "_" : "") + char.ToLowerInvariant(c)))),
            BoundaryKeys.All.Select(key => key.Key));
        foreach (var (key, property) in BoundaryKeys.All.Zip(properties))
        {
            Assert.Equal(property.GetValue(usual), key.Of(usual));
            Assert.Equal(key.Most, property.GetValue(key.With(usual, key.Most)));
            Assert.InRange(key.Of(usual), key.Least, key.Most);
        }
    }

    [Fact]
    public void Read_AnyText_NeverThrows()
    {
        var random = new Random(7);
        var words = (string[])["[", "]", "[[", "]]", "=", "\"", "'", "\n", "charts", "file", "headers", "leave_out", "1", "0.5", "2026-10-24", "{", "}", ",", ".", "#", "\\", "level", " ", "\"\"\"", "9999999999999999999", "1e999", "inf", "nan", "\u202E"];
        for (var i = 0; i < 400; i++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(40)).Select(_ => words[random.Next(words.Length)]));
            Assert.NotNull(Read(text).Plan);
        }
    }

    private static WeekReading Read(string text) => WeekReader.Read("week.toml", text, ColumnCatalogue.Names);
}
