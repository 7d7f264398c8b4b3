using System.Buffers.Binary;
using System.Reflection.PortableExecutable;
using System.Text;

namespace Tendency.Booklet.Lettering;

/// <summary>Inter (SIL OFL 1.1) as it lies in this assembly: inside the resources of a package's assembly that is embedded as bytes and never loaded.</summary>
internal static class InterResource
{
    private const string Carrier = "Avalonia.Fonts.Inter.dll";

    /// <summary>The font file of a weight: "Regular", "Bold".</summary>
    /// <exception cref="InvalidOperationException">The build did not embed the font.</exception>
    public static byte[] Read(string weight)
    {
        using var stream = typeof(InterResource).Assembly.GetManifestResourceStream(Carrier)
            ?? throw new InvalidOperationException($"{Carrier} is not embedded; restore the packages and build again.");
        using var portable = new PEReader(stream);
        var resources = portable.PEHeaders.CorHeader!.ResourcesDirectory;
        // One resource, "!AvaloniaResources": its length, then an index of (path, offset, size), then the files.
        var reader = portable.GetSectionData(resources.RelativeVirtualAddress).GetReader(0, resources.Size);
        var bytes = reader.ReadBytes(reader.ReadInt32());
        var wanted = $"Inter-{weight}.ttf";
        var indexLength = BinaryPrimitives.ReadInt32LittleEndian(bytes);
        using var index = new BinaryReader(new MemoryStream(bytes, 4, indexLength), Encoding.UTF8);
        index.ReadInt32(); // version
        for (var left = index.ReadInt32(); left > 0; left--)
        {
            var path = index.ReadString();
            var offset = index.ReadInt32();
            var size = index.ReadInt32();
            if (path.EndsWith(wanted, StringComparison.Ordinal))
            {
                return bytes.AsSpan(4 + indexLength + offset, size).ToArray();
            }
        }

        throw new InvalidOperationException($"{wanted} is not among the embedded fonts.");
    }
}
