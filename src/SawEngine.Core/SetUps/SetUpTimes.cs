namespace SawEngine.Core.SetUps;

/// <summary>Set-up times of one saw in whole seconds.</summary>
/// <param name="Section">For another section, unless <see cref="SectionChanges"/> says otherwise.</param>
/// <param name="GradeGroup">For another grade group.</param>
/// <param name="Blade">For another blade, or a worn one.</param>
public sealed record SetUpTimes(long Section, long GradeGroup, long Blade)
{
    /// <summary>Section changes that take another time than <see cref="Section"/>, by pair; null where all take the same.</summary>
    public SectionChanges? SectionChanges { get; init; }
}
