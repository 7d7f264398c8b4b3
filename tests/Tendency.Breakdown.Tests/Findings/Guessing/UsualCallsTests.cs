using Tendency.Breakdown.Findings.Guessing;

namespace Tendency.Breakdown.Tests.Findings.Guessing;

/// <summary>What any offense is thought to do, against what was counted.</summary>
public sealed class UsualCallsTests
{
    // Passes among runs and passes, public play-by-play of one professional season's first six weeks, 2022: quarters one to three but for the
    // second's last two minutes, within eight points. The yards
    // stand for 1–3, 4–6, 7–9, 11–15 and 16 up, except on third and short.
    [Theory]
    [InlineData(1, 10, "gun", 1055, 0.578)]
    [InlineData(1, 10, "under", 1236, 0.358)]
    [InlineData(2, 2, "gun", 142, 0.444)]
    [InlineData(2, 2, "under", 150, 0.260)]
    [InlineData(2, 5, "gun", 249, 0.582)]
    [InlineData(2, 5, "under", 220, 0.364)]
    [InlineData(2, 8, "gun", 364, 0.775)]
    [InlineData(2, 8, "under", 147, 0.476)]
    [InlineData(2, 10, "gun", 255, 0.722)]
    [InlineData(2, 10, "under", 98, 0.337)]
    [InlineData(2, 13, "gun", 172, 0.895)]
    [InlineData(2, 18, "gun", 83, 0.867)]
    [InlineData(3, 1, "under", 89, 0.180)]
    [InlineData(3, 2, "gun", 90, 0.689)]
    [InlineData(3, 3, "gun", 79, 0.810)]
    [InlineData(3, 5, "gun", 291, 0.935)]
    [InlineData(3, 8, "gun", 261, 0.977)]
    [InlineData(3, 13, "gun", 124, 0.976)]
    [InlineData(3, 18, "gun", 76, 0.908)]
    public void PassLogOdds_DownDistanceAndPasser_AreAsCounted(int down, int distance, string backSet, int plays, double share) =>
        AssertNear(share, plays, Snap(down, distance, backSet, 2, 450, 0));

    // First and 10 in the last quarter before its last four minutes, by score; the same source.
    [Theory]
    [InlineData(-12, "gun", 143, 0.818)]
    [InlineData(-5, "gun", 125, 0.624)]
    [InlineData(5, "gun", 83, 0.410)]
    [InlineData(-12, "under", 55, 0.491)]
    [InlineData(-5, "under", 95, 0.316)]
    [InlineData(5, "under", 96, 0.292)]
    [InlineData(12, "under", 74, 0.189)]
    public void PassLogOdds_LastQuarter_LeansAsTheScoreDoes(int margin, string backSet, int plays, double share) =>
        AssertNear(share, plays, Snap(1, 10, backSet, 4, 570, margin));

    // The last two minutes of the first half, any down: second and 7 stands for them; the same source.
    [Theory]
    [InlineData(90, "gun", 314, 0.793)]
    [InlineData(30, "gun", 410, 0.920)]
    [InlineData(60, "under", 88, 0.330)]
    public void PassLogOdds_HalfEnds_HurriesFromTheGunOnly(int clock, string backSet, int plays, double share) =>
        AssertNear(share, plays, Snap(2, 7, backSet, 2, clock, 0));

    // An older count: third or fourth and 1, professional, 2010–2015, published 2016 [from memory]. Plays are not known, thousands, so only
    // the allowance counts.
    [Theory]
    [InlineData("under", 0.18)]
    [InlineData("gun", 0.56)]
    public void PassLogOdds_LateDownAndOne_IsAsCountedBefore(string backSet, double share) =>
        AssertNear(share, 5000, Snap(3, 1, backSet, 2, 450, 0), Snap(4, 1, backSet, 2, 450, 0));

    // Two standard errors of the count, and 0.06 for the plays of a band that are not its middle: other yards, field, score, tempo.
    private static void AssertNear(double share, int plays, params Snapshot[] snaps)
    {
        var pass = snaps.Average(snap => 1 / (1 + Math.Exp(-UsualCalls.PassLogOdds(snap).Sum())));
        var tolerance = 0.06 + (2 * Math.Sqrt(share * (1 - share) / plays));
        Assert.InRange(pass, share - tolerance, share + tolerance);
    }

    private static Snapshot Snap(int down, int distance, string backSet, int quarter, int clock, int margin) =>
        new(down, distance, 60, quarter, clock, margin, backSet, "", "", "");
}
