using SawEngine.Core.Saws;
using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling;

/// <summary>A saw as the schedule sees it.</summary>
public sealed record ScheduleSaw
{
    /// <summary>Its id, unique.</summary>
    public required string SawId { get; init; }

    /// <summary>When it is attended: ascending, disjoint, not touching, none before the start of the plan.</summary>
    public required IReadOnlyList<TimeWindow> Windows { get; init; }

    /// <summary>Shifts that are lost to downtimes and maintenance: ascending, disjoint, none overlaps <see cref="Windows"/>. They only serve to explain.</summary>
    public IReadOnlyList<TimeWindow> Lost { get; init; } = [];

    /// <summary>When it can be attended besides, at a price: ascending, disjoint. The schedule may use it or not.</summary>
    public IReadOnlyList<OvertimeWindow> Overtime { get; init; } = [];

    /// <summary>When and how far it may run by itself; null where it never may.</summary>
    public UnattendedRuns? Unattended { get; init; }

    /// <summary>What it is set up for at the start of the plan.</summary>
    public required SetUpState InitialState { get; init; }

    /// <summary>Its set-up times.</summary>
    public required SetUpTimes SetUpTimes { get; init; }

    /// <summary>Share of the mounted blade's life that is left, in billionths; a new blade has 1e9.</summary>
    public long RemainingBladeLife { get; init; } = FullBladeLife;

    /// <summary>Used blades that lie ready for it.</summary>
    public IReadOnlyList<ShelfBlade> Shelf { get; init; } = [];

    /// <summary>The life of a new blade in billionths.</summary>
    public const long FullBladeLife = 1_000_000_000;

    /// <summary>A saw as it stands at the start of the plan: of what it is set up for, the mounted blade alone is known.</summary>
    public static ScheduleSaw Of(Saw saw, IReadOnlyList<TimeWindow> windows)
    {
        var mounted = saw.Blades.FirstOrDefault(blade => string.Equals(blade.BladeId, saw.MountedBladeId, StringComparison.Ordinal));
        return new()
        {
            SawId = saw.SawId,
            Windows = windows,
            InitialState = new(null, null, saw.MountedBladeId),
            SetUpTimes = new(
                WholeSeconds(saw.Times.SectionSetUpSeconds),
                WholeSeconds(saw.Times.GradeGroupSetUpSeconds),
                WholeSeconds(saw.Times.BladeChangeSeconds),
                WholeSeconds(saw.Times.AngleSetUpSeconds ?? saw.Times.SwivelSeconds)),
            RemainingBladeLife = (long)decimal.Floor((mounted?.RemainingLife ?? 1m) * FullBladeLife),
        };
    }

    private static long WholeSeconds(decimal seconds) => (long)decimal.Ceiling(seconds);
}
