using System.Text;

namespace Tendency.SampleCharts.Hostile;

/// <summary>Files nobody should send: random bytes, mangled charts, charts of nasty cells, mangled workbooks. Seeded.</summary>
public static class HostileFiles
{
    private const string Header = "game,play,offense,defense,series,quarter,clock,margin,down,distance,ball_on,hash,personnel,formation,strength,back_side,call,run_scheme,run_side,gain,result,note";

    private static readonly string[] s_nasty =
    [
        "=1+1", "=cmd|'/C calc'!A0", "@SUM(A1)", "+1+1", " =1", "-", "--", "1e999", "-1e999", "NaN", "Infinity", "99999999999999999999", "0x1F", "1,5", "1.5", "½", "7.0",
        "\0", "\u202Eabc\u202C", "\u200F7", "\uFEFF", "\"", "\"\"", "\"unclosed", "a\"b", "\n", "\r", "\r\n", "\t", ";", "|", ",", "#REF!", "11-Dec", "1/2", "2026-10-24", "12:00:00 AM", ":", "::", ":42",
        "goal", "G", "own", "own 51", "opp 0", "-0", "own -5", "try", "none", "L", "both", "Total", "game", "play", "😀", "é", "\u0301", "　", "\u00A0", "..", "../../etc/passwd", "{{7*7}}", "<script>", "%s%n",
    ];

    private static readonly Encoding[] s_encodings =
    [
        new UTF8Encoding(false), new UTF8Encoding(true), Encoding.Unicode, Encoding.BigEndianUnicode, new UnicodeEncoding(false, false), Encoding.UTF32, Encoding.Latin1,
    ];

    /// <summary>One file: a name and its bytes, at most a few hundred kilobytes.</summary>
    public static (string Name, byte[] Bytes) Next(Random random) => random.Next(10) switch
    {
        0 => ("noise.csv", Noise(random)),
        1 or 2 or 3 => ("mangled.csv", Mangle(random, Encode(random, Chart(random, 0.02)))),
        4 or 5 => ("nasty.csv", Encode(random, Chart(random, 0.4))),
        6 => ("wide.csv", Encode(random, Wide(random))),
        7 => ("lines.csv", Encode(random, Lines(random))),
        8 => ("mangled.xlsx", Mangle(random, HostileWorkbooks.Next(random))),
        _ => ("nasty.xlsx", HostileWorkbooks.Next(random)),
    };

    /// <summary>A word no column wants.</summary>
    internal static string Nasty(Random random) => random.Next(40) switch
    {
        0 => new string('x', random.Next(100_000)),
        1 => string.Concat(Enumerable.Repeat("\"", random.Next(200))),
        2 => new string((char)random.Next(0xD800, 0xE000), 1),
        _ => s_nasty[random.Next(s_nasty.Length)],
    };

    private static byte[] Noise(Random random)
    {
        var bytes = new byte[random.Next(20_000)];
        random.NextBytes(bytes);
        if (random.Next(2) == 0)
        {
            // Printable noise gets past the question whether it is text at all.
            for (var i = 0; i < bytes.Length; i++)
            {
                bytes[i] = (byte)",;\n\"\t 0123456789abcdefgR"[bytes[i] % 24];
            }
        }

        return bytes;
    }

    private static string Chart(Random random, double nastyShare)
    {
        var text = new StringBuilder();
        var separator = ",;\t|"[random.Next(4)];
        var headers = Header.Split(',');
        if (random.Next(4) == 0)
        {
            _ = text.Append("Week 9").Append('\n');
        }

        _ = text.AppendJoin(separator, headers).Append('\n');
        for (var row = 0; row < random.Next(60); row++)
        {
            var cells = Enumerable.Range(0, headers.Length).Select(column => random.NextDouble() < nastyShare ? Nasty(random) : Cell(random, headers[column], row));
            _ = random.Next(20) switch
            {
                0 => text.AppendJoin(separator, headers),
                1 => text.AppendJoin(separator, cells.Take(random.Next(headers.Length))),
                2 => text.AppendJoin(separator, cells).Append(separator, random.Next(200)),
                3 => text,
                _ => text.AppendJoin(separator, cells),
            };
            _ = text.Append(random.Next(50) == 0 ? "\r" : random.Next(2) == 0 ? "\n" : "\r\n");
        }

        return text.ToString();
    }

    private static string Cell(Random random, string header, int row) => header switch
    {
        "game" => "North",
        "play" => $"{row + 1}",
        "down" => $"{random.Next(1, 5)}",
        "distance" => $"{random.Next(1, 15)}",
        "ball_on" => $"own {random.Next(1, 50)}",
        "call" => random.Next(2) == 0 ? "run" : "pass",
        "gain" => $"{random.Next(-5, 30)}",
        "quarter" => $"{random.Next(1, 5)}",
        "clock" => $"{random.Next(15)}:{random.Next(60):00}",
        "note" => "two\nlines, here",
        _ => random.Next(2) == 0 ? "" : "L",
    };

    private static string Wide(Random random)
    {
        var columns = random.Next(1, 100_000);
        return random.Next(3) switch
        {
            0 => new string(',', columns),
            1 => Header + string.Concat(Enumerable.Range(0, columns / 20).Select(i => $",dist{i}")) + "\nNorth,1\n",
            _ => Header + "\n" + string.Concat(Enumerable.Repeat("North,1,,,,,,,1,10,,,,,,,run" + new string(',', columns / 20) + "x\n", 5)),
        };
    }

    private static string Lines(Random random) => random.Next(4) switch
    {
        0 => Header + "\n" + string.Concat(Enumerable.Repeat("x\n", random.Next(20_000))),
        1 => Header + "\n" + string.Concat(Enumerable.Repeat("North,\"1\n", random.Next(3_000))),
        2 => new string('\n', random.Next(100_000)) + Header,
        _ => Header + "\n" + string.Concat(Enumerable.Range(0, random.Next(3_000)).Select(i => $"g{i},{i},,,,,,,1,10,,,,w{i},,,run\n")),
    };

    private static byte[] Encode(Random random, string text)
    {
        var encoding = s_encodings[random.Next(s_encodings.Length)];
        return [.. encoding.GetPreamble(), .. encoding.GetBytes(text)];
    }

    private static byte[] Mangle(Random random, byte[] bytes)
    {
        var mangled = bytes.ToList();
        for (var i = random.Next(12); i > 0 && mangled.Count > 0; i--)
        {
            var at = random.Next(mangled.Count);
            var length = Math.Min(random.Next(1, 200), mangled.Count - at);
            switch (random.Next(5))
            {
                case 0: mangled[at] = (byte)random.Next(256); break;
                case 1: mangled.RemoveRange(at, length); break;
                case 2: mangled.InsertRange(at, mangled.GetRange(at, length)); break;
                case 3: mangled.InsertRange(at, Encoding.UTF8.GetBytes(Nasty(random))); break;
                default: mangled.RemoveRange(at, mangled.Count - at); break;
            }
        }

        return [.. mangled];
    }
}
