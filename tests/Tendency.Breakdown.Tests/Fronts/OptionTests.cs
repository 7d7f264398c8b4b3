using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Breakdown.Fronts.Options;
using Tendency.Breakdown.Tests.Charts;

namespace Tendency.Breakdown.Tests.Fronts;

public class OptionTests
{
    [Fact]
    public void Share_ChartedTagsAndSchemes_AreToldApart()
    {
        const string chart = """
            game,play,down,distance,call,run_scheme,run_side,back_side,read,result
            A,1,1,10,run,zone read,R,L,,rush
            A,2,1,10,run,inside zone,R,L,read,rush
            A,3,1,10,run,counter gt,R,L,bash,rush
            A,4,1,10,run,bash,R,R,,rush
            A,5,1,10,run,speed option,R,R,,rush
            A,6,1,10,rpo,inside zone,R,L,rpo,complete
            A,7,1,10,run,power,R,L,none,rush
            A,8,1,10,run,power,R,L,,rush
            """;
        var log = ChartText.Plays(chart);
        var shares = OptionShare.Of(log, RunSample.Of(log, FrontBook.BuiltIn), 0.95).Where(s => s.Situation == "all plays").ToArray();
        Assert.Equal([(OptionKind.Read, 2), (OptionKind.Bash, 2), (OptionKind.Option, 1), (OptionKind.Rpo, 1)], shares.Select(s => (s.Kind, s.Count)));
        Assert.All(shares, s => Assert.Equal(8, s.Runs));
    }

    /// <summary>A 5 to the back is the read man; without one an overhang is. The safety has the quarterback unless the shell brings a man down;
    /// an edge man or backer outside everybody has him himself, and the safety fills inside.</summary>
    [Theory]
    [InlineData("tight", Shell.TwoDeep, "overhang", "outside safety", true)]
    [InlineData("tight", Shell.Invert, "overhang", "outside safety", false)]
    [InlineData("tight", Shell.Cloud, "overhang", "corner", false)]
    [InlineData("five to back", Shell.TwoDeep, "5", "outside safety", true)]
    [InlineData("edge to back", Shell.TwoDeep, "edge", "edge", false)]
    [InlineData("okie", Shell.TwoDeep, "backer", "backer", false)]
    [InlineData("over", Shell.TwoDeep, "5", "safety", true)]
    [InlineData("tight", Shell.Buzz, "overhang", "", false)]
    public void Fitter_ZoneReadKeptToTheBack_IsTheManTheShellLeaves(string front, Shell shell, string readMan, string keep, bool late)
    {
        var fitter = OptionFitter.Of([FrontBook.BuiltIn.Front(front)!], FrontBook.BuiltIn).Single(f => f.Shell == shell);
        Assert.Equal((readMan, keep, late), (fitter.ReadMan, fitter.Keep, fitter.KeepIsLate));
    }
}
