using Tendency.Breakdown.Findings;

namespace Tendency.Breakdown.Tests.Findings;

public sealed class SituationWordsTests
{
    [Theory]
    [InlineData("personnel", "12", "12 personnel")]
    [InlineData("pressure_side", "none", "no extra rusher")]
    [InlineData("pressure_side", "both", "pressure from both sides")]
    [InlineData("pressure_side", "L", "pressure from the left")]
    [InlineData("shell", "2", "two high safeties shown")]
    [InlineData("down", "3", "3rd down")]
    [InlineData("call", "run", "run")]
    public void Outcome_ACode_ReadsAsWords(string column, string value, string said) => Assert.Equal(said, SituationWords.Outcome(column, value));

    [Theory]
    [InlineData("fast", "fast tempo")]
    [InlineData("normal", "normal tempo")]
    [InlineData("huddle", "huddle")]
    [InlineData("no huddle", "no huddle")]
    [InlineData("sugar huddle", "sugar huddle")]
    [InlineData("two minute pace", "two minute pace")]
    public void Of_Tempo_SaysThatItIsOne(string value, string said) => Assert.Equal(said, SituationWords.Of("tempo", value));
}
