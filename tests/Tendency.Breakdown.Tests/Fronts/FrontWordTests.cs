using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Fronts;

namespace Tendency.Breakdown.Tests.Fronts;

public sealed class FrontWordTests
{
    [Theory]
    [InlineData("over", "Over")]
    [InlineData("five to back", "Five to back")]
    [InlineData("Okie", "Okie")]
    [InlineData("", "")]
    public void Of_Front_StartsWithACapital(string name, string said) => Assert.Equal(said, FrontWord.Of(name));

    [Fact]
    public void Of_FrontAsConditionOrOutcome_IsCapitalizedInsideTheSentence()
    {
        Assert.Equal("Over", SituationWords.Of(ColumnNames.Front, "over"));
        Assert.Equal("Under", SituationWords.Outcome(ColumnNames.Front, "under"));
    }
}
