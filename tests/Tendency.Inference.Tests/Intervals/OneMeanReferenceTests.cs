using Tendency.Inference.Intervals;

namespace Tendency.Inference.Tests.Intervals;

public sealed class OneMeanReferenceTests
{
    // Student's own data (1908): hours of sleep gained with each of two drugs by ten patients; limits as R's t.test prints them.
    private static readonly double[] s_first = [.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0, 2];
    private static readonly double[] s_second = [1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4];

    [Fact]
    public void Student_SleepGained_AsPublished()
    {
        Check(-.5297804, 2.0297804, OneMean.Student(s_first, .95));
        Check(.8976775, 3.7623225, OneMean.Student(s_second, .95));
    }

    // By hand: mean 3, variance 2.5, t(4) = 2.776445 (Fisher and Yates), so 3 ± 2.776445 √0.5.
    [Fact]
    public void Student_OneToFive_AsByHand() => Check(3 - 1.9632431, 3 + 1.9632431, OneMean.Student([1, 2, 3, 4, 5], .95));

    [Fact]
    public void Student_EqualValues_HasNoWidth() => Assert.Equal(new Interval(4, 4), OneMean.Student([4, 4, 4], .95));

    [Fact]
    public void Student_OneValueOrNoLevel_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => OneMean.Student([1], .95));
        Assert.Throws<ArgumentOutOfRangeException>(() => OneMean.Student([1, 2], 1));
    }

    private static void Check(double low, double high, Interval interval)
    {
        Assert.Equal(low, interval.Low, 1e-6);
        Assert.Equal(high, interval.High, 1e-6);
    }
}
