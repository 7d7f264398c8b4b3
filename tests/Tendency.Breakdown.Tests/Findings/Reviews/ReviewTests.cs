using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.Reviews;
using Tendency.Breakdown.Situations;

namespace Tendency.Breakdown.Tests.Findings.Reviews;

public sealed class ReviewTests
{
    // Four games of nine runs in ten with the back strong, ten in twenty with the back weak.
    private static readonly SavedFindings s_saved = Saved(4);

    [Theory]
    [InlineData(9, 1, Verdict.Held)]
    [InlineData(7, 3, Verdict.Broke)]
    [InlineData(3, 1, Verdict.TooFewSnaps)]
    public void Of_OneGame_JudgesWhetherItFitsTheClaimOrTheUsual(int runs, int passes, Verdict verdict)
    {
        var claim = Strong(Review.Of(s_saved, ChartOfCalls.Of(1, ("strong", "none", _ => runs, _ => passes), ("weak", "none", _ => 10, _ => 10)), []));

        Assert.Equal(new Tally(runs, runs + passes), claim.Game);

        // By hand: 36 of 40 and a dozen plays at the others' half; 7 of 10 lies below 0.726, where p^x (1-p)^(n-x) is the same for both shares.
        Assert.Equal(verdict, claim.Verdict);
        Assert.Equal(42.0 / 52, claim.Claim.Expected, 12);
        Assert.Equal(76.0 / 120, claim.Claim.Usual, 12);
    }

    [Fact]
    public void Of_Bands_CountEverySnapOfEveryClaim()
    {
        var review = Review.Of(s_saved, ChartOfCalls.Of(1, ("strong", "none", _ => 9, _ => 1), ("weak", "none", _ => 10, _ => 10)), []);

        Assert.Equal(review.Claims.Sum(c => c.Game.Plays), review.Bands.Sum(b => b.Game.Plays));
        Assert.Equal(review.Claims.Sum(c => c.Game.Count), review.Bands.Sum(b => b.Game.Count));
        Assert.All(review.Bands, b => Assert.InRange(b.Said, b.Low, b.Low + 0.1));
        Assert.Equal(review.Claims.Count, review.Held + review.Broke + review.TooFew);
    }

    [Fact]
    public void Of_Fronts_SetsExpectedBesideReal()
    {
        var saved = s_saved with { Fronts = [new SavedFront("tight", 0.40, 0.30, 0.50), new SavedFront("over", 0.50, 0.40, 0.60)] };

        var review = Review.Of(saved, ChartOfCalls.Of(1, ("weak", "none", _ => 5, _ => 5)), [("tight", new Tally(19, 20)), ("bear", new Tally(1, 2))]);

        var front = Assert.Single(review.Fronts);
        Assert.Equal("tight", front.Saved.Front);
        Assert.False(front.IsAsSaid);
    }

    [Fact]
    public void Write_ThenRead_GivesTheSameText()
    {
        var text = SavedFindingsFile.Write(s_saved);

        Assert.Equal(text, SavedFindingsFile.Write(SavedFindingsFile.Read(text, out _)!));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[1,2]")]
    [InlineData("{\"subject\":null}")]
    public void Read_AnythingElse_SaysWhyAndGivesNothing(string text)
    {
        Assert.Null(SavedFindingsFile.Read(text, out var problem));
        Assert.NotEmpty(problem);
    }

    [Fact]
    public void Between_OneMoreGameThatBreaksTheHabit_TellsItIsGone()
    {
        var changes = Changes.Between(s_saved, Saved(8, g => g < 4 ? 9 : 2));

        Assert.Equal(["G5", "G6", "G7", "G8"], changes.NewGames);
        Assert.Equal(120, changes.NewPlays);
        Assert.Contains(changes.Gone, c => c.Claim.Situation == "back_side=strong");
        Assert.Empty(Changes.Between(s_saved, s_saved).New);
        Assert.Empty(Changes.Between(s_saved, s_saved).Moved);
    }

    private static SavedFindings Saved(int games, Func<int, int>? runs = null)
    {
        var plays = ChartOfCalls.Of(games, ("strong", "none", runs ?? (_ => 9), g => 10 - (runs ?? (_ => 9))(g)), ("weak", "none", _ => 10, _ => 10));
        var tells = Tells.Search(plays, "call", TellOptions.Default with { Dimensions = ["back_side"] });
        return SavedFindings.Of(new StudiedPlays("", Unit.Offense, plays, []), [tells], [], null, 0.95);
    }

    private static ReviewedClaim Strong(Review review) => Assert.Single(review.Claims, c => c.Claim.Situation == "back_side=strong");
}
