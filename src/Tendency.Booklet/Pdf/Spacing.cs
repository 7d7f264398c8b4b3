using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pdf;

/// <summary>Empty height between two blocks, in points: about 30 from a block's last line to the next title's baseline, less between things that belong together.</summary>
internal static class Spacing
{
    public static double Between(Block before, Block next) => Points(before, Opening(next));

    /// <summary>The block that meets the eye first.</summary>
    private static Block Opening(Block block) => block switch
    {
        Together { Blocks: [var first, ..] } => Opening(first),
        SideBySide { Sides: [{ Blocks: [var first, ..] }, ..] } => Opening(first),
        _ => block,
    };

    private static double Points(Block before, Block next) => (before, next) switch
    {
        (Space, _) or (_, Space) => 0,
        (Heading, Paragraph) => 3,
        (Heading, EmptyState) => 5,
        (Heading, Table) => 0,
        (Heading, _) => 5,
        (Together, Paragraph) => 10,
        (_, Heading { Bare: true }) => 12,
        (_, Heading) => 18,
        (_, EvidenceList) => 14,
        (_, Paragraph { Style: TextStyle.Note }) => 5,
        (_, Paragraph) => 6,
        (_, SmallMultiples) => 16,
        (Paragraph, _) => 8,
        (KeyFigures, _) => 16,
        (_, Table) => 12,
        _ => 8,
    };
}
