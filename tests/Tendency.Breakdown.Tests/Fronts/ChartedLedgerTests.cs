using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Tests.Charts;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>
/// Ledgers worked by hand from the counting rules before the program was asked, one charted run each: every front, every family of runs,
/// no tight end, one, two, a wing, an empty backfield. S is the strength's side (right), W the other.
/// </summary>
public class ChartedLedgerTests
{
    private const string Header = "game,play,down,distance,call,personnel,strength,formation,back_set,back_side,attached,wing,run_scheme,run_side,read,gain,result\n";

    [Theory]
    [InlineData("tight", "outside zone", "W", "11 S - strong", "play 0/+1; back -1/0; all -1/+1")]
    [InlineData("tight", "iso", "S", "21 S - strong", "play 0/0; back -2/0; all -2/0")]
    [InlineData("tight", "insert zone", "W", "11 - S strong", "play -1/+1; back 0/0; all -1/+1")]
    [InlineData("five to back", "zone read", "S", "11 S - weak", "play 0/0; back -2/0; all -2/0")]
    [InlineData("five to back", "counter gt", "S", "11 S - weak", "play -1/0; back 0/+1; all -1/+1")]
    [InlineData("five away", "pin pull", "W", "11 S - strong", "play 0/+1; back -1/0; all -1/+1")]
    [InlineData("double five", "inside zone", "S", "12 both - weak", "play 0/0; back -2/0; all -2/0")]
    [InlineData("double five", "midline", "W", "10 - - weak", "play 0/+1; back -1/0; all -1/+1")]
    [InlineData("edge away", "counter gt", "S", "11 S - weak", "play -2/-1; back +1/+2; all -1/+1")]
    [InlineData("edge to back", "dart", "W", "11 S - strong", "play 0/+1; back -1/0; all -1/+1")]
    [InlineData("over", "power", "W", "11 - W weak", "play -1/0; back +1/+1; all 0/+1")]
    [InlineData("over", "trap", "S", "11 S - strong", "play 0/+1; back 0/0; all 0/+1")]
    [InlineData("over", "triple option", "W", "11 S - strong", "play -1/0; back -1/-1; all -2/-1")]
    [InlineData("over", "qb sweep", "W", "11 S - weak", "play 0/0; back -1/0; all -1/0")]
    [InlineData("wide nine", "speed option", "S", "12 both - strong", "play 0/0; back -2/-1; all -2/-1")]
    [InlineData("wide nine", "draw", "W", "10 - - weak", "play +1/+2; back 0/0; all +1/+2")]
    [InlineData("even 2i", "sneak", "S", "11 S - strong", "play +1/+1; back -1/0; all 0/+1")]
    [InlineData("even 2i", "jet sweep", "S", "11 S - strong", "play 0/0; back -1/0; all -1/0")]
    [InlineData("even 2i", "power read", "S", "11 S - strong", "play -1/0; back 0/0; all -1/0")]
    [InlineData("under", "outside zone", "W", "11 S - strong", "play +1/+1; back -1/0; all 0/+1")]
    [InlineData("under", "duo", "S", "12 both - strong", "play 0/+1; back -1/-1; all -1/0")]
    [InlineData("under", "counter gh", "S", "11 - S weak", "play 0/+1; back 0/0; all 0/+1")]
    [InlineData("bear", "inside zone", "W", "11 S - strong", "play +2/+2; back -2/-1; all 0/+1")]
    [InlineData("bear", "power", "S", "11 - S strong", "play 0/0; back 0/0; all 0/0")]
    [InlineData("bear", "wham", "S", "11 - S weak", "play +1/+1; back -1/0; all 0/+1")]
    [InlineData("okie", "toss sweep", "S", "11 S - strong", "play +1/+1; back -1/0; all 0/+1")]
    [InlineData("okie", "arc read", "S", "11 - S weak", "play +1/+1; back -2/-1; all -1/0")]
    [InlineData("stack", "split zone", "S", "11 - S weak", "play +2/+2; back -1/0; all +1/+2")]
    [InlineData("stack", "qb power", "W", "11 S - weak", "play +1/+1; back -1/0; all 0/+1")]
    public void Matrix_RunWorkedByHand_CountsAsByHand(string front, string scheme, string to, string look, string spare) =>
        Assert.Equal(spare, Ledger(front, scheme, to, look));

    /// <summary>A back who leads for the quarterback adds a gap, so from an empty backfield nobody does; the front is turned by strength.</summary>
    [Fact]
    public void Matrix_EmptyBackfield_IsCountedWithoutASideOfTheBack() =>
        Assert.Equal("play +2/+2; back -2/0; all 0/+2", Ledger("tight", "qb draw", "S", "00 - - none"));

    /// <summary>A wing outside an attached tight end is the fourth man of the surface (two linemen, tight end, wing) until the scheme brings him in.</summary>
    [Theory]
    [InlineData("over", "buck sweep", "play -1/0; back 0/0; all -1/0")]
    [InlineData("over", "outside zone", "play 0/0; back -1/0; all -1/0")]
    [InlineData("over", "power", "play -1/0; back 0/0; all -1/0")]
    [InlineData("over", "split zone", "play +1/+1; back -2/-1; all -1/0")]
    public void Matrix_WingOutsideTheTightEnd_LengthensTheSurface(string front, string scheme, string spare) =>
        Assert.Equal(spare, Ledger(front, scheme, "S", "12 S S strong"));

    /// <summary>Two tight ends on one side are charted by the formation's word alone.</summary>
    [Fact]
    public void Matrix_TwoTightEndsOnOneSide_AreBothOnTheSurface() =>
        Assert.Equal(Ledger("over", "outside zone", "S", "12 S S strong"), Ledger("over", "outside zone", "S", "12 S - strong", formation: "te over"));

    /// <summary>A throw off a defender takes him out of the fit, whether it is charted as an option to pass or by the throw's own name.</summary>
    [Theory]
    [InlineData("rpo")]
    [InlineData("bubble")]
    [InlineData("glance")]
    public void Matrix_ThrowOffTheOverhang_TakesHimOut(string read) =>
        Assert.Equal("play 0/+1; back -1/0; all -1/+1", Ledger("tight", "inside zone", "S", "10 - - weak", read));

    /// <summary>The back's path adds a gap away from the quarterback's blocking.</summary>
    [Fact]
    public void Matrix_BashOffCounter_AddsTheBacksPath() =>
        Assert.Equal("play -2/0; back 0/0; all -2/0", Ledger("edge away", "counter gt", "S", "11 S - strong", "bash"));

    /// <param name="look">Personnel, attached side, wing side, back side.</param>
    private static string Ledger(string front, string scheme, string to, string look, string read = "none", string formation = "")
    {
        var words = look.Split(' ');
        var set = words[3] == "none" ? "empty" : "gun";
        var line = $"A,1,1,10,run,{words[0]},R,{formation},{set},{words[3]},{Side(words[1])},{Side(words[2])},{scheme},{Side(to)},{read},4,rush\n";
        var book = FrontBook.BuiltIn;
        var check = FrontCheck.Of(ChartText.Plays(Header + line), book, [book.Front(front)!], new FrontOptions { Draws = 10 });
        var backAt = words[3] switch { "strong" => "S", "weak" => "W", _ => to };
        var side = backAt == to ? RunTo.ToBack : RunTo.Away;
        return check.Matrix.Cells[0].Single(cell => cell.Side == side).Ledger;
    }

    private static string Side(string word) => word switch { "S" => "R", "W" => "L", "-" => "none", _ => word };
}
