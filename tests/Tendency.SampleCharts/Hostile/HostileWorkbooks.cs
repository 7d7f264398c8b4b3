using System.IO.Compression;
using System.Security;
using System.Text;

namespace Tendency.SampleCharts.Hostile;

/// <summary>Workbooks built to do harm: parts that unpack to hugeness, references out of range, entities, links to other files.</summary>
public static class HostileWorkbooks
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006/relationships";

    private static readonly string[] s_headers = ["game", "play", "down", "distance", "call", "clock", "note"];

    public static byte[] Next(Random random) => random.Next(8) switch
    {
        0 => Bomb(random.Next(18, 40)),
        1 => Archive(Sheet(random, $"<row r=\"{random.NextInt64(-5, 5_000_000_000)}\"><c r=\"{Letters(random)}{random.Next()}\"><v>1</v></c></row>")),
        2 => Archive("<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c SYSTEM \"file:///etc/passwd\">]>" + Sheet(random, "<row r=\"9\"><c r=\"A9\" t=\"inlineStr\"><is><t>&b;&c;</t></is></c></row>")),
        3 => Archive(Sheet(random, string.Concat(Enumerable.Repeat("<row><c><v>", 2000)))),
        4 => Archive(Sheet(random, "<row r=\"9\"><c r=\"A9\" t=\"s\"><v>99999999</v></c><c r=\"B9\" s=\"77777\"><v>1e999</v></c><c r=\"C9\" t=\"d\"><v>not a day</v></c></row>")),
        5 => Archive(Sheet(random, "<row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>")),
        6 => Archive(Sheet(random, ""), external: true),
        _ => Archive(Sheet(random, "")),
    };

    /// <summary>A workbook whose sheet unpacks to so many megabytes of blanks.</summary>
    public static byte[] Bomb(int megabytes) => Archive("<worksheet xmlns=\"" + Main + "\"><sheetData>" + new string(' ', megabytes * 1024 * 1024) + "</sheetData></worksheet>");

    private static string Sheet(Random random, string more)
    {
        var rows = new StringBuilder();
        for (var row = 1; row < random.Next(2, 8); row++)
        {
            _ = rows.Append("<row r=\"").Append(row).Append("\">");
            for (var column = 0; column < s_headers.Length; column++)
            {
                _ = rows.Append(Cell(random, $"{(char)('A' + column)}{row}", row == 1 ? s_headers[column] : column == 1 ? $"{row}" : HostileFiles.Nasty(random)));
            }

            _ = rows.Append("</row>");
        }

        return $"<worksheet xmlns=\"{Main}\"><sheetData>{rows}{more}</sheetData></worksheet>";
    }

    private static string Cell(Random random, string place, string text)
    {
        var escaped = SecurityElement.Escape(string.Concat(text.Where(c => c is >= ' ' and < '\uD800')));
        return random.Next(5) switch
        {
            0 => $"<c r=\"{place}\" t=\"e\"><v>#REF!</v></c>",
            1 => $"<c r=\"{place}\"><f>{escaped}</f><v>{random.Next(-100, 100)}</v></c>",
            2 => $"<c r=\"{place}\" s=\"{random.Next(5)}\"><v>{random.NextDouble() * Math.Pow(10, random.Next(-5, 12)):R}</v></c>",
            _ => $"<c r=\"{place}\" t=\"inlineStr\"><is><t>{escaped}</t></is></c>",
        };
    }

    private static string Letters(Random random) => string.Concat(Enumerable.Range(0, random.Next(1, 8)).Select(_ => (char)('A' + random.Next(26))));

    private static byte[] Archive(string sheet, bool external = false)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(archive, "[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/></Types>");
            Add(archive, "_rels/.rels", $"<Relationships xmlns=\"{Package}\"><Relationship Id=\"rId1\" Type=\"{Office}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Add(archive, "xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><sheets><sheet name=\"chart\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
            var target = external ? "Target=\"http://192.0.2.1/sheet1.xml\" TargetMode=\"External\"" : "Target=\"worksheets/sheet1.xml\"";
            Add(archive, "xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"{Package}\"><Relationship Id=\"rId1\" Type=\"{Office}/worksheet\" {target}/></Relationships>");
            Add(archive, "xl/worksheets/sheet1.xml", sheet);
        }

        return stream.ToArray();
    }

    private static void Add(ZipArchive archive, string name, string text)
    {
        using var part = archive.CreateEntry(name, CompressionLevel.Optimal).Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }
}
