using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Tests.Glossaries;

public class FormationWordTests
{
    [Theory]
    [InlineData("Trips Rt", "Trips", "R")]
    [InlineData("trips right", "trips", "R")]
    [InlineData("TRIPS R", "TRIPS", "R")]
    [InlineData("Rt Trips", "Trips", "R")]
    [InlineData("trips_lt", "trips", "L")]
    [InlineData("TripsLt", "Trips", "L")]
    [InlineData("Gun Trips Bunch Left", "Gun Trips Bunch", "L")]
    [InlineData("Trips Rt Bunch", "Trips Bunch", "R")]
    [InlineData("Doubles", "Doubles", "")]
    [InlineData("Alert", "Alert", "")]
    [InlineData("Right", "Right", "")]
    [InlineData("Twins Right Wing Left", "Twins Right Wing Left", "")]
    public void Of_SideInTheWord_IsTakenFromTheShape(string written, string shape, string strength) =>
        Assert.Equal(new FormationWord(shape, strength), FormationWord.Of(written));

    // Families as coaches commonly group them.
    [Theory]
    [InlineData("Trips Rt", "trips 3x1")]
    [InlineData("Gun 2x2", "doubles 2x2")]
    [InlineData("Gun Trips Bunch Rt", "bunch")]
    [InlineData("Gun Trips Nub Lt", "nub trips")]
    [InlineData("Empty Trips Rt", "empty 3x2")]
    [InlineData("I Right", "i backs")]
    [InlineData("I Strong Rt", "offset i")]
    [InlineData("Pistol Wing Lt", "tight wing")]
    [InlineData("Heavy Right", "two tight same side")]
    [InlineData("Ranger", "")]
    public void FormationFamily_PartsOfTheWord_TellIt(string written, string family) =>
        Assert.Equal(family, Glossary.BuiltIn.FormationFamily(written));

    [Fact]
    public void FormationFamily_UnknownWord_IsReadFromTheSurface()
    {
        Assert.Equal("tight wing", Glossary.BuiltIn.FormationFamily("Ranger", new FormationSeen("R", "R", 2)));
        Assert.Equal("two tight 2x2", Glossary.BuiltIn.FormationFamily("Ranger", new FormationSeen("both", "none", 2)));
        Assert.Equal("trips 3x1", Glossary.BuiltIn.FormationFamily("Trips", new FormationSeen("both", "none", 2)));
    }
}
