namespace SawEngine.Core.Scheduling;

/// <summary>What a step of a job asks of the people at the saw.</summary>
public enum StepKind
{
    /// <summary>The saw works by itself: a cut with its motions. Where the job may, it runs unattended.</summary>
    Cut,

    /// <summary>A bar or bundle is loaded: attended, or by itself from the magazine as far as that reaches.</summary>
    Load,

    /// <summary>A heavy bar or bundle is loaded: an operator's hands and a crane are busy with it.</summary>
    CraneLoad,

    /// <summary>Something is put away: attended.</summary>
    Handling,
}
