using Tendency.Tests.Shared;

namespace Tendency.Booklet.Tests.Infra;

/// <summary>Compares a text with the one kept in a file. On a mismatch the text is written beside it as <c>.received.txt</c>; TENDENCY_ACCEPT=1 accepts it.</summary>
internal static class Golden
{
    public static void Check(string folder, string name, string text)
    {
        var golden = Path.Combine(Checkout.Root, "tests", "Tendency.Booklet.Tests", folder, "Golden", $"{name}.golden.txt");
        var received = golden.Replace(".golden.", ".received.", StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("TENDENCY_ACCEPT") == "1")
        {
            _ = Directory.CreateDirectory(Path.GetDirectoryName(golden)!);
            File.WriteAllText(golden, text);
            File.Delete(received);
            return;
        }

        var expected = File.Exists(golden) ? File.ReadAllText(golden) : "";
        if (expected != text)
        {
            File.WriteAllText(received, text);
        }

        Assert.Equal(expected, text);
    }
}
