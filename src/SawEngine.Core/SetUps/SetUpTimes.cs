namespace SawEngine.Core.SetUps;

/// <summary>Set-up times of one saw in whole seconds.</summary>
/// <param name="Section">For another section.</param>
/// <param name="GradeGroup">For another grade group.</param>
/// <param name="Blade">For another blade, or a worn one.</param>
public sealed record SetUpTimes(long Section, long GradeGroup, long Blade);
