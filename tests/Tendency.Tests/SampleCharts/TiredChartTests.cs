using System.Text;
using Tendency.SampleCharts;
using Tendency.SampleCharts.Tired;

namespace Tendency.Tests.SampleCharts;

/// <summary>The list of planted mistakes tells the truth about the files, line by line.</summary>
public sealed class TiredChartTests
{
    [Fact]
    public void MistakeList_EveryLine_HoldsTheWrongValueItNames()
    {
        var list = Records(File.ReadAllText(Path.Combine(SampleLogs.Root, "planted", "port-halden-tired.csv")), ',').Skip(1).Select(r => r.Cells).ToList();
        Assert.InRange(list.Count, 50, 120);
        foreach (var file in list.GroupBy(mistake => mistake[0]))
        {
            // Latin-1 reads every byte as one letter; the accents are in notes, which carry no mistakes.
            var text = Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(SampleLogs.Root, "port-halden-tired", file.Key))).ReplaceLineEndings("\n");
            var rows = Records(text, text.Contains(";play;", StringComparison.Ordinal) ? ';' : ',').ToList();
            var headers = rows.First(row => row.Cells[0] == "game").Cells;
            foreach (var mistake in file.Where(mistake => mistake[2].Length > 0))
            {
                var row = rows.Single(row => row.Line == int.Parse(mistake[1]));
                Assert.Equal(mistake[3], row.Cells[Array.IndexOf(headers, mistake[2])]);
                Assert.NotEqual(mistake[3], mistake[4]);
            }
        }
    }

    [Fact]
    public void MistakeList_Kinds_CoverTheUsualTroubles()
    {
        var list = Records(File.ReadAllText(Path.Combine(SampleLogs.Root, "planted", "port-halden-tired.csv")), ',').Skip(1).Select(r => r.Cells[5]).ToList();
        string[] usual =
        [
            "wrong down", "wrong distance", "sign of the gain", "own and opponent's side swapped", "hash moved after an incomplete pass",
            "scramble charted as a run", "sack with a gain", "touchdown not marked", "typo", "row pasted twice",
        ];
        Assert.All(usual, kind => Assert.Contains(kind, list));
    }

    [Fact]
    public void Chart_OtherSeasons_PlantsMistakesInEveryGame()
    {
        for (ulong seed = 1; seed <= 4; seed++)
        {
            var clean = SampleFiles.Sheets(SampleSets.PortHaldenSeason(seed));
            Assert.All(TiredAssistant.Chart(clean, seed), file => Assert.InRange(file.Mistakes.Count, 8, 25));
            Assert.All(TiredAssistant.SlipCellsOnly(clean, seed), file => Assert.All(file.Mistakes, mistake => Assert.NotEqual(mistake.Right, mistake.Wrong)));
        }
    }

    /// <summary>Records of delimited text with the physical line each starts on; quotes as RFC 4180 has them.</summary>
    private static IEnumerable<(int Line, string[] Cells)> Records(string text, char delimiter)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        var (line, start) = (1, 1);
        for (var i = 0; i < text.Length; i++)
        {
            var letter = text[i];
            if (letter == '"')
            {
                quoted = !quoted;
            }
            else if (letter == delimiter && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else if (letter == '\n' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
                yield return (start, [.. cells]);
                cells.Clear();
                start = line + 1;
            }
            else
            {
                cell.Append(letter);
            }

            line += letter == '\n' ? 1 : 0;
        }
    }
}
