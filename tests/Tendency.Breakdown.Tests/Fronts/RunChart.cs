using System.Text;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>Charts of runs to the right on first and ten, tight end right; the back's side follows from the run's. Every other run succeeds.</summary>
internal static class RunChart
{
    private const string Header = "game,play,down,distance,call,run_scheme,run_side,back_side,strength,attached,front,gain,result\n";

    public static string Of(params (int Plays, string Scheme, string RunTo)[] runs)
    {
        var text = new StringBuilder(Header);
        var play = 0;
        foreach (var (plays, scheme, runTo) in runs)
        {
            for (var i = 0; i < plays; i++)
            {
                play++;
                text.Append(Line(play, scheme, runTo, "", play % 2 == 0));
            }
        }

        return text.ToString();
    }

    public static string Line(int play, string scheme, string runTo, string front, bool succeeds)
    {
        var back = runTo switch { "to back" => "R", "away" => "L", _ => runTo };
        return $"A,{play},1,10,run,{scheme},R,{back},R,R,{front},{(succeeds ? 6 : 1)},rush\n";
    }
}
