using System.Text;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.SelfScouts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.SelfScouts;

namespace Tendency.Booklet.Tests.Pages;

/// <summary>Six games of 60 first-and-tens in which one thing, or nothing, tells run from pass.</summary>
public sealed class GuessPageTests
{
    // Seven runs in ten, motion on each: down and distance can only say run every time, the look knows all.
    private static readonly Study s_motion = Of((play, game) => Chance(play, game) < 7 ? ("run", "jet") : ("pass", "none"));

    // The motion is drawn apart from the call.
    private static readonly Study s_nothing = Of((play, game) => (Chance(play, game) < 5 ? "run" : "pass", Chance(play + 1000, game) < 5 ? "jet" : "none"));

    [Fact]
    public void Compose_ALookTells_SetsItAgainstDownAndDistance()
    {
        var page = Text(s_motion);

        Assert.Matches(@"They can be read: (9\d|100)% of calls guessed right before the snap, \d\d% from down and distance alone\.", page);
        Assert.DoesNotContain("without looking", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_NoLookTells_SaysThatLooksAddNothingOrCouldBeLuck()
    {
        var page = Text(s_nothing).Split('\n')[1];

        Assert.True(page.StartsWith("Their looks add nothing: ", StringComparison.Ordinal) || page.StartsWith("What their looks add could be luck: ", StringComparison.Ordinal), page);
        Assert.DoesNotContain("Most of all", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_GamesThatTurnAround_AreNotReadableBelowAlwaysSayingOneCall()
    {
        // 50 to 55 runs of 60 in three games, 5 to 10 in three: whatever the others teach is wrong.
        var page = Text(Of((play, game) => (play <= (game <= 3 ? 50 + game : 4 + game) ? "run" : "pass", "none"))).Split('\n')[1];

        Assert.Matches(@"^Their looks add nothing: \d+% of calls guessed right before the snap, \d\d% by always saying (run|pass)\.$", page);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Compose_AlwaysSayingOneCall_IsWhatWasCalledMoreOften(bool readable)
    {
        var study = readable ? s_motion : s_nothing;
        var calls = Enumerable.Range(0, study.Plays.Rows).Select(row => study.Plays.Category("call")[row]).CountBy(word => word);
        var (call, count) = calls.MaxBy(word => word.Value);

        Assert.Matches($@"Nothing: always {call}\* \| .* {count} of 360 ", Text(study));
    }

    [Fact]
    public void Compose_NoSolidDot_NamesNoSituation()
    {
        var page = Text(Studies.FiveGames);

        // Every dot of its situations holds the overall line.
        Assert.DoesNotContain("solid dot against 69%", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Most of all", page, StringComparison.Ordinal);
    }

    [Fact]
    public void ComposeSelfScout_ALookTells_SaysSoOfUs()
    {
        var booklet = SelfScoutBooklet.Compose(s_motion, SelfScout.Run(s_motion.Chosen, SelfScoutOptions.Default), [], DateTimeOffset.UnixEpoch);

        Assert.Matches(@"We can be read: (9\d|100)% of calls guessed right before the snap, \d\d% from down and distance alone\.", BlockText.Of(booklet));
    }

    private static string Text(Study study) => BlockText.Of(BookletOrder.Compose(study, DateTimeOffset.UnixEpoch, ["guess"]).Pages.Single());

    private static Study Of(Func<int, int, (string Call, string Motion)> snap)
    {
        var study = Studies.Of([.. Enumerable.Range(1, 6).Select(game =>
        {
            var text = new StringBuilder("game,play,down,distance,call,motion\n");
            for (var play = 1; play <= 60; play++)
            {
                var (call, motion) = snap(play, game);
                text.Append($"G{game},{play},1,10,{call},{motion}\n");
            }

            return text.ToString();
        })]);
        return study with { Guess = Guess.Run(study.Plays, "call", GuessOptions.Default with { Trees = 40, Weighs = false }) };
    }

    // Ten sides of a die, by a hash of game and play.
    private static int Chance(int play, int game)
    {
        unchecked
        {
            var hash = ((uint)play * 2_654_435_761u) ^ ((uint)game * 40_503u);
            hash ^= hash >> 15;
            hash *= 2_246_822_519u;
            return (int)((hash ^ (hash >> 13)) % 10);
        }
    }
}
