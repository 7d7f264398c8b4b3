using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Breakdown.Fronts.Protections;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Tests.Pages.Pictures;

public class SlidePictureTests
{
    [Theory]
    [InlineData(14, 15, true, "slide")]
    [InlineData(1, 15, true, "slide to back")]
    [InlineData(8, 15, false, "slide: either way")]
    [InlineData(15, 15, true, "slide")]
    public void Of_Habit_ShowsBothSidesAndTheArrowOfTheSlide(int away, int plays, bool hasArrow, string words)
    {
        var habit = new SlideHabit("back weak", plays, away, OneProportion.Wilson(away, plays, .95), (double)away / plays);
        var picture = SlidePicture.Of(habit, new Share(away, plays, habit.Range, .5), 1);

        var said = picture.Shapes.OfType<WordShape>().Select(word => word.Text).ToArray();
        Assert.Contains(Figures.CountOf(away, plays), said);
        Assert.Contains(Figures.CountOf(plays - away, plays), said);
        Assert.Contains(words, said);
        var arrows = picture.Shapes.OfType<PathShape>().Where(path => path.End == Cap.Arrow).ToArray();
        Assert.Equal(hasArrow ? 1 : 0, arrows.Length);
        Assert.All(arrows, arrow => Assert.Equal(2 * away > plays, arrow.Spots[1].X > arrow.Spots[0].X));
        Assert.All(picture.Shapes.OfType<BoxShape>(), box => Assert.InRange(box.Y, 0, picture.Height));
    }
}
