using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>One line of the players' sheet.</summary>
/// <param name="Cue">What is seen: "Doubles, back strong".</param>
/// <param name="Expect">What comes: "pass".</param>
/// <param name="Share">How often, against an even split.</param>
/// <param name="More">What of it most often, with its count; may be empty.</param>
/// <param name="Plays">All plays with the cue.</param>
internal sealed record Tip(string Cue, string Expect, Share Share, string More, IReadOnlySet<(string Game, int? Play)> Plays);
