using Tendency.Breakdown.Situations;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>Our own calls as the next opponent reads them.</summary>
/// <param name="Tells">Dearest first.</param>
/// <param name="Searched">Pairs of situation and outcome looked at, over all questions.</param>
/// <param name="NotCharted">Questions that could not be asked, and the column each lacks.</param>
public sealed record SelfScoutReport(
    Unit Unit, IReadOnlyList<string> Games, int Plays, IReadOnlyList<SelfTell> Tells, int Searched, IReadOnlyList<(string Question, string Column)> NotCharted);
