using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Fronts;

/// <summary>A front book and what was wrong with the files it was read from.</summary>
public sealed record ReadFrontBook(FrontBook Book, IReadOnlyList<Problem> Problems);

/// <summary>Reads a staff's fronts and ratings onto a book, and the built-in files.</summary>
public static class FrontBookReader
{
    private static readonly string[] FrontColumns = ["front", "line_to", "line_off", "nose", "linebackers", "overhangs", "late"];
    private static readonly string[] RatingColumns = ["front", "scheme", "rating"];

    private static readonly Dictionary<string, SetBy> SetByWords = new(StringComparer.Ordinal)
    {
        ["strength"] = SetBy.Strength,
        ["back"] = SetBy.Back,
    };

    private static readonly Dictionary<string, NoseKind> NoseWords = new(StringComparer.Ordinal)
    {
        ["floats"] = NoseKind.Floats,
        ["to play"] = NoseKind.ToPlay,
        ["fixed"] = NoseKind.Fixed,
    };

    private static readonly Dictionary<string, LateHelp> LateWords = new(StringComparer.Ordinal)
    {
        ["open middle"] = LateHelp.OpenSafetyAndMiddle,
        ["to middle"] = LateHelp.ToSafetyAndMiddle,
        ["off middle"] = LateHelp.OffSafetyAndMiddle,
        ["one"] = LateHelp.OneSafety,
        ["strength"] = LateHelp.StrongSafety,
        ["post"] = LateHelp.PostSafety,
    };

    private static readonly Dictionary<string, InsertKind> InsertWords = new(StringComparer.Ordinal)
    {
        ["none"] = InsertKind.None,
        ["always"] = InsertKind.Always,
        ["if off ball"] = InsertKind.IfOffBall,
        ["back leads"] = InsertKind.BackLeads,
    };

    private static readonly Dictionary<string, NoseRule> NoseRuleWords = new(StringComparer.Ordinal)
    {
        ["lag"] = NoseRule.Lag,
        ["play"] = NoseRule.Play,
    };

    private static readonly Dictionary<string, InsertStart> InsertStartWords = new(StringComparer.Ordinal)
    {
        ["wing"] = InsertStart.Wing,
        ["far wing"] = InsertStart.FarWing,
        ["backfield"] = InsertStart.Backfield,
        ["back"] = InsertStart.Back,
    };

    private static readonly Dictionary<string, Carrier> CarrierWords = new(StringComparer.Ordinal)
    {
        ["back"] = Carrier.Back,
        ["quarterback"] = Carrier.Quarterback,
        ["motion man"] = Carrier.MotionMan,
    };

    private static readonly Dictionary<string, LineBlocks> LineWords = new(StringComparer.Ordinal)
    {
        ["step"] = LineBlocks.Step,
        ["down"] = LineBlocks.Down,
    };

    /// <summary>The book with a staff's fronts added or replaced and its ratings put over the built-in ones.</summary>
    /// <param name="fronts">Text of the staff's fronts file; null = none.</param>
    /// <param name="ratings">Text of the staff's ratings file; null = none.</param>
    /// <param name="onto">The book to change; it stays as it is.</param>
    /// <param name="frontsFile">Name to report mistakes under.</param>
    /// <param name="ratingsFile">Name to report mistakes under.</param>
    public static ReadFrontBook Read(
        TextReader? fronts, TextReader? ratings, FrontBook onto, string frontsFile = "fronts.csv", string ratingsFile = "ratings.csv")
    {
        var problems = new List<Problem>();
        var all = onto.Fronts.ToList();
        foreach (var front in fronts is null ? [] : Fronts(fronts, frontsFile, problems))
        {
            var at = all.FindIndex(f => f.Name == front.Name);
            if (at >= 0)
            {
                all[at] = front;
            }
            else
            {
                all.Add(front);
            }
        }

        var book = new FrontBook(all, onto.Schemes, onto.Ratings);
        var changed = ratings is null ? [] : Ratings(ratings, ratingsFile, book, "staff", problems);
        return new ReadFrontBook(new FrontBook(all, onto.Schemes, onto.Ratings.Concat(changed)), problems);
    }

    /// <exception cref="InvalidOperationException">A built-in file has a mistake.</exception>
    internal static FrontBook ReadBuiltIn()
    {
        var problems = new List<Problem>();
        using var frontText = BuiltIn("fronts.csv");
        using var schemeText = BuiltIn("schemes.csv");
        using var ratingText = BuiltIn("ratings.csv");
        var fronts = Fronts(frontText, "fronts.csv", problems);
        var schemes = Schemes(schemeText, problems);
        var ratings = Ratings(ratingText, "ratings.csv", new FrontBook(fronts, schemes, []), "expert", problems);
        return problems.Count == 0
            ? new FrontBook(fronts, schemes, ratings)
            : throw new InvalidOperationException($"{problems[0].Place}: {problems[0].Message}");
    }

    private static StreamReader BuiltIn(string name) =>
        new(typeof(FrontBookReader).Assembly.GetManifestResourceStream("Fronts/" + name)
            ?? throw new InvalidOperationException($"{name} is not embedded."));

    private static List<Front> Fronts(TextReader text, string file, List<Problem> problems)
    {
        var fronts = new List<Front>();
        foreach (var row in FrontTable.Read(text, file, FrontColumns, problems).Rows)
        {
            var name = row.Text("front").Replace('_', ' ').ToLowerInvariant();
            if (name.Length == 0)
            {
                row.Fail(FrontRules.UnreadableValue, "front", "The front has no name.");
            }

            var front = new Front(
                name,
                row.OneOf("set_by", SetByWords, SetBy.Strength),
                row.Words("line_to", ' '),
                row.Words("line_off", ' '),
                row.OneOf("nose", NoseWords, NoseKind.Fixed),
                row.Whole("linebackers", 0, 5, 2),
                row.Whole("overhangs", 0, 2, 0),
                row.OneOf("late", LateWords, LateHelp.OneSafety),
                row.Text("edge_to"),
                row.Text("edge_off"),
                row.Number("rush_to", -2, 2, 0),
                row.Number("rush_off", -2, 2, 0),
                row.Text("strong_against"),
                row.Text("weak_against"),
                row.Text("notes"),
                row.Words("also_called", ';'));
            foreach (var (column, technique) in front.LineTo.Select(t => ("line_to", t)).Concat(front.LineOff.Select(t => ("line_off", t))).Where(t => !Ledgers.Technique.IsKnown(t.Item2)))
            {
                row.Fail(FrontRules.UnreadableValue, column, $"'{technique}' is no technique; there are {string.Join(", ", Ledgers.Technique.All)}.", NearestWord.In(Ledgers.Technique.All, technique) ?? "");
            }

            if (front.Men > Front.MostMen)
            {
                row.Fail(FrontRules.UnreadableValue, "front", $"'{name}' puts {front.Men} men on the line, behind it and late; a defense has eleven.");
            }

            if (row.IsReadable)
            {
                fronts.Add(front);
            }
        }

        return fronts;
    }

    private static List<RunScheme> Schemes(TextReader text, List<Problem> problems)
    {
        var schemes = new List<RunScheme>();
        foreach (var row in FrontTable.Read(text, "schemes.csv", ["scheme", "family"], problems).Rows)
        {
            schemes.Add(new RunScheme(
                row.Text("scheme"),
                row.Text("family"),
                row.Text("aim"),
                row.Whole("pullers", 0, 3, 0),
                row.Whole("from_back", 0, 2, 0),
                row.Text("puller"),
                row.OneOf("insert", InsertWords, InsertKind.None),
                row.Text("insert_side") == "play",
                row.Text("insert_word"),
                row.Whole("adds_play", 0, 2, 0),
                row.Whole("adds_back", 0, 2, 0),
                row.Words("add_word", ';'),
                row.Text("read_man"),
                row.Text("usual_side"),
                row.OneOf("nose", NoseRuleWords, NoseRule.Play),
                row.Whole("stays", 0, 1, 0) == 1,
                row.Text("rule"))
            {
                Pulls = [.. row.Words("pulls", ';').Select(Pull.Parse).OfType<Pull>()],
                InsertFrom = row.OneOf("insert_from", InsertStartWords, InsertStart.Wing),
                Carrier = row.OneOf("carrier", CarrierWords, Carrier.Back),
                Line = row.OneOf("line", LineWords, LineBlocks.Straight),
            });
        }

        return schemes;
    }

    private static List<Rating> Ratings(TextReader text, string file, FrontBook book, string basis, List<Problem> problems)
    {
        var ratings = new List<Rating>();
        foreach (var row in FrontTable.Read(text, file, RatingColumns, problems).Rows)
        {
            var front = book.Front(row.Text("front"));
            var scheme = book.Scheme(row.Text("scheme"));
            var side = row.Text("run_to");
            var sides = RunToWords.Parse(side) is { } one ? [one] : new[] { RunTo.ToBack, RunTo.Away };
            if (front is null)
            {
                row.Fail(FrontRules.UnknownFront, "front", $"'{row.Text("front")}' is no front we know.", NearestWord.In(book.Fronts.Select(f => f.Name), row.Text("front")) ?? "");
            }

            if (scheme is null)
            {
                row.Fail(FrontRules.UnknownScheme, "scheme", $"'{row.Text("scheme")}' is no run scheme we know.", NearestWord.In(book.Schemes.Select(s => s.Name), row.Text("scheme")) ?? "");
            }

            if (sides.Length > 1 && side is not ("" or "both"))
            {
                row.Fail(FrontRules.UnreadableValue, "run_to", $"'{side}' is none of: to back, away, both.", NearestWord.In([RunToWords.ToBack, RunToWords.Away, "both"], side) ?? "");
            }

            if (row.Text("rating").Length == 0)
            {
                row.Fail(FrontRules.UnreadableValue, "rating", "The rating is blank; it is a number from -2 to 2.");
            }

            var value = row.Number("rating", -2, 2, 0);
            if (row.IsReadable)
            {
                var said = row.Text("basis");
                ratings.AddRange(sides.Select(s => new Rating(
                    front!.Name, scheme!.Name, s, value, row.Text("reason"), row.Text("confidence"), said.Length > 0 ? said : basis)));
            }
        }

        return ratings;
    }
}
