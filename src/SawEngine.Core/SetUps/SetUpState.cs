namespace SawEngine.Core.SetUps;

/// <summary>What a saw is set up for. A null member is unknown at the start of a plan and always needs its set-up.</summary>
/// <param name="Section">Section in the vise.</param>
/// <param name="GradeGroup">Grade group whose chips are in the chip bin.</param>
/// <param name="BladeId">Mounted blade.</param>
/// <param name="Angle">Angle that the head stands at.</param>
public sealed record SetUpState(string? Section, string? GradeGroup, string? BladeId, string? Angle = null);
