using System.Text;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Booklet.Tests.Pages;

/// <summary>
/// A booklet in which games against fronts like ours count more. Two games of 20 plays against an Over front, ours: 15 runs of power each.
/// Two against a Bear: 5 runs of inside zone each.
/// </summary>
/// <remarks>
/// Worked by hand. Weights 1, 1, 1/4, 1/4. Run share (15 + 15 + 5/4 + 5/4) / (20 + 20 + 5 + 5) = 32.5 / 50 = 65 %, plain 40 of 80. The games differ:
/// plays of one down correlate by (.8333 - .2056) / (.8333 + 9 x .2056) = .2340 (8, 8, 3, 3 and 7, 7, 2, 2 of ten), of two downs by (1.6667 - .1973) /
/// (1.6667 + 19 x .1973) = .2713. So plain 80² / (80 + 720 x .2340 + 800 x .2713) = 13.7 plays, Wilson 27–73 %; weighted 50² / (42.5 + 382.5 x .2340 +
/// 425 x .2713) = 10.1, Wilson 36–86 %; by the weights alone 50² / 42.5 = 58.8. Power 30 / 32.5 = 92 % of runs, plain 30 of 40; by the weights alone
/// 32.5² / (30 + 10/16) = 34.5 runs, and as each game has one scheme only, hardly more than its two games. Of all plays a game of ours has 20 / 50 = 40 %, plain 25 %.
/// </remarks>
public sealed class WeightsPageTests
{
    private static readonly Study s_plain = Studies.Of(WeekPlan.Default with { Fronts = ["over"], LikeOurDefense = true }, Unit.Offense, [.. Charts()]);
    private static readonly Study s_weighted = With(GameWeights.LikeOurs(s_plain.Plays, front => front == "over"));
    private static readonly ScoutingBooklet s_booklet = BookletOrder.Compose(s_weighted, DateTimeOffset.UnixEpoch);

    [Fact]
    public void Compose_Brief_SaysWhichGamesCountMoreAndTheWeightedShareBesideThePlainCount()
    {
        var brief = Text("brief");

        Assert.Contains("*Games against fronts like ours count more.* A play counts from 1 in Ash to 0.25 in Dogwood.", brief, StringComparison.Ordinal);
        Assert.Contains("Run share: 50% 40 of 80 (27–73%). Weighted 65%, like 10", brief, StringComparison.Ordinal);
        Assert.Contains("Page [weights]", brief, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_WeightsPage_HasEachGamesFrontsWeightAndShare()
    {
        var page = Text("weights");

        Assert.Contains("Ash counts most: one play there weighs 4.0 times one against Dogwood.", page, StringComparison.Ordinal);
        Assert.Contains("*G1 Ash* | 20 | 100% | 20 of 20 | *1* | 25% | 40%", page, StringComparison.Ordinal);
        Assert.Contains("*G3 Cedar* | 20 | 0% | 0 of 20 | *0.25* | 25% | 10%", page, StringComparison.Ordinal);
        Assert.Contains("80 plays count like 59 of equal weight", page, StringComparison.Ordinal);
        Assert.Contains("= *All plays* | 80 | open dot against 50% | 50% 40 of 80 (27–73%) | 65% / 36–86% / like 10 | +15", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_WeightsByAge_TellsWhyOnceInTheDeck()
    {
        var recent = With(GameWeights.Recency(s_plain.Plays, 2));

        Assert.Equal(
            "Recent games count more, halving every 2 games.",
            BookletOrder.Compose(recent, DateTimeOffset.UnixEpoch).Pages.Single(page => page.Anchor == "weights").Deck);
    }

    [Fact]
    public void Compose_BothReasons_ShowsEachWeightAndTheirProduct()
    {
        var both = With(GameWeights.Recency(s_plain.Plays, 1).And(GameWeights.LikeOurs(s_plain.Plays, front => front == "over")));
        var page = BlockText.Of(BookletOrder.Compose(both, DateTimeOffset.UnixEpoch).Pages.Single(page => page.Anchor == "weights"));

        // Ash: three games old, 1/8, faced only our front: 1/8. Dogwood: newest, none of ours: 1/4.
        Assert.Contains("*G1 Ash* | 20 | 100% | 20 of 20 | 0.13 | 1 | *0.13*", page, StringComparison.Ordinal);
        Assert.Contains("*G4 Dogwood* | 20 | 0% | 0 of 20 | 1 | 0.25 | *0.25*", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_Tables_HaveTheWeightedShareBesideThePlainOne()
    {
        Assert.Contains("= *All plays* | 80 | open dot against 50% | 50% 40 of 80 (27–73%) | 65% / 36–86% / like 10", Text("down-distance"), StringComparison.Ordinal);

        // Goodman over two schemes at about 2.4 of 3.2: chi-square at 0.05 / 2 is 5.02, Wilson with it 23–97 %. Weighted the runs are worth two plays.
        Assert.Contains("*Power* | 30 | tick | 75% 30 of 40 (23–97%) | too few", Text("run-game"), StringComparison.Ordinal);
        Assert.Contains("Weighted, likely (like 2)", Text("run-game"), StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_FrontCheck_RanksOnTheWeightedMixAndSaysSo()
    {
        var page = Text("front-check");

        Assert.Contains("= *Their mix* / share, runs | 75% n = 30 | 25% n = 10", page, StringComparison.Ordinal);
        Assert.Contains("= *Weighted* / like 34 runs | 92% like 32 | 8% like 3", page, StringComparison.Ordinal);
        Assert.Contains("Ranked on the weighted mix", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_EveryPage_IsWeightedExactlyWhereItSaysSo()
    {
        var inside = s_booklet.Pages.Where(page => page.Anchor is not ("brief" or "weights" or "reading")).ToArray();

        Assert.All(inside, page => Assert.Equal(
            page.Deck.Contains("Games against fronts like ours count more.", StringComparison.Ordinal),
            BlockText.Of(page.Blocks).Contains("eighted", StringComparison.Ordinal)));
        Assert.All(inside.Where(page => page.Anchor is "steadiness" or "games" or "tells" or "guess"), page => Assert.EndsWith("Here all games count alike.", page.Deck, StringComparison.Ordinal));
        Assert.All(inside, page => Assert.False(page.Deck.Contains("count alike", StringComparison.Ordinal) && page.Deck.Contains("count more", StringComparison.Ordinal), page.Anchor));
        var named = Text("weights");
        Assert.All(inside, page => Assert.Equal(page.Deck.Contains("count more", StringComparison.Ordinal), Named(named, page.Name)));

        static bool Named(string used, string name) => used[used.IndexOf("on these pages:", StringComparison.Ordinal)..used.IndexOf("Every other page", StringComparison.Ordinal)].Contains(name, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_EveryGameAlike_SaysNothingOfWeights()
    {
        var text = BlockText.Of(BookletOrder.Compose(With(GameWeights.Equal), DateTimeOffset.UnixEpoch));

        Assert.DoesNotContain("eighted", text, StringComparison.Ordinal);
        Assert.DoesNotContain("count more", text, StringComparison.Ordinal);
        Assert.DoesNotContain("count alike", text, StringComparison.Ordinal);
        Assert.DoesNotContain("[weights]", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Print_Weighted_ReadsBackWithoutFault()
    {
        using var pdf = new MemoryStream();
        _ = PdfPrinter.Print(s_booklet, PaperSize.Letter, pdf);

        Assert.Empty(PdfCheck.Inspect(pdf).Findings);
    }

    private static string Text(string anchor) => BlockText.Of(s_booklet.Pages.Single(page => page.Anchor == anchor));

    private static Study With(GameWeights weights)
    {
        var options = new FrontOptions { Draws = 500, CardDraws = 200, Weights = weights };
        var check = FrontCheck.Of(s_plain.Plays, FrontBook.BuiltIn, [FrontBook.BuiltIn.Front("over")!, FrontBook.BuiltIn.Front("tight")!], options);
        return s_plain with
        {
            Tells = [Tells.Search(s_plain.Plays, "call", TellOptions.Default)],
            Guess = Guess.Run(s_plain.Plays, "call", GuessOptions.Default with { Trees = 20, Weighs = false }),
            Steadiness = SteadyHabits.Follow(s_plain.Plays, Habit.Usual, seed: 1, draws: 199),
            Weights = weights,
            Fronts = check,
            FrontCard = FrontCard.Of(s_plain.Plays, check, options),
        };
    }

    private static IEnumerable<string> Charts()
    {
        foreach (var (game, front, runs, scheme) in new[] { ("Ash", "over", 15, "power"), ("Birch", "over", 15, "power"), ("Cedar", "bear", 5, "inside zone"), ("Dogwood", "bear", 5, "inside zone") })
        {
            var text = new StringBuilder("game,play,down,distance,call,run_scheme,run_side,back_side,strength,attached,front,gain,result\n");
            for (var play = 1; play <= 20; play++)
            {
                text.Append($"{game},{play},{(play % 2) + 1},10,{(play <= runs ? $"run,{scheme},R,L,R,R,{front},{play % 7},rush" : $"pass,,,L,R,R,{front},{play % 9},complete")}\n");
            }

            yield return text.ToString();
        }
    }
}
