namespace Tendency.SampleCharts.Walks;

/// <summary>An offense's coordinator: first the look, then, from that look, the call.</summary>
public interface IOffense
{
    Look LineUp(Situation at, Chance chance);

    Call CallPlay(Situation at, Look look, Chance chance);
}

/// <summary>A defense's coordinator: sees the situation and the look.</summary>
public interface IDefense
{
    DefenseLook Answer(Situation at, Look look, Chance chance);
}

/// <summary>A team as a game needs it.</summary>
public sealed record Team(string Name, IOffense Offense, IDefense Defense);
