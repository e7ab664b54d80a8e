namespace SawEngine.Core.SetUps;

/// <summary>Set-up times of one saw in whole seconds.</summary>
/// <param name="Section">For another section, unless <see cref="SectionChanges"/> says otherwise.</param>
/// <param name="GradeGroup">For another grade group, unless <see cref="GradeGroupChanges"/> says otherwise.</param>
/// <param name="Blade">For another blade, or a worn one.</param>
/// <param name="Angle">For another angle, unless <see cref="AngleChanges"/> says otherwise.</param>
public sealed record SetUpTimes(long Section, long GradeGroup, long Blade, long Angle = 0)
{
    /// <summary>Section changes that take another time, by pair; null where all take the same.</summary>
    public SetUpChanges? SectionChanges { get; init; }

    /// <summary>Grade group changes that take another time, by pair: chips that must not mix; null where all take the same.</summary>
    public SetUpChanges? GradeGroupChanges { get; init; }

    /// <summary>Angle changes that take another time, by pair; null where all take the same.</summary>
    public SetUpChanges? AngleChanges { get; init; }

    /// <summary>Kinds of <see cref="SetUpRules.Order"/> that are done beside the others, from the moment when the saw is free; the others follow one another.</summary>
    public IReadOnlyList<string> Beside { get; init; } = [];
}
