using Tendency.Booklet.Blocks;
using Tendency.Files;
using Tendency.Input;

namespace Tendency.Output;

/// <summary>The play lists behind a booklet's numbers, for the film room: one row a play of a list.</summary>
internal static class CutUpFile
{
    public static void Write(ScoutingBooklet booklet, string path)
    {
        var rows = CutUp.Of(booklet).SelectMany((cut, i) => cut.Plays.Select((play, n) => (object?[])[i + 1, cut.Page, cut.Topic, cut.Name, cut.Plays.Count, n + 1, play.Game, play.Play, play.Clip]));
        OutputFile.Write(path, TableText.Write(new OutputTable(["list", "page", "topic", "name", "plays", "order", "game", "play", "clip"], [.. rows]), OutputFormat.Csv));
    }
}
