using SawEngine.Core.CuttingData;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>A cutting job with its saw, its settings and its times.</summary>
public sealed record PlannedJob
{
    /// <summary>Saw, sequence and times.</summary>
    public required ScheduledJob Scheduled { get; init; }

    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>How the section lies in the vise.</summary>
    public required Lay Lay { get; init; }

    /// <summary>Designation of the grade.</summary>
    public required string Grade { get; init; }

    /// <summary>The blade.</summary>
    public required string BladeId { get; init; }

    /// <summary>The largest bundle in which its bars are cut, by which the settings go; one bar where none are cut together.</summary>
    public CutBundle Bundle { get; init; } = CutBundle.Single;

    /// <summary>Settings of a square cut.</summary>
    public required CutData Square { get; init; }

    /// <summary>Settings of the slowest mitered cut; null where all are square.</summary>
    public CutData? Mitered { get; init; }

    /// <summary>Seconds by kind, set-ups aside.</summary>
    public required TimeParts Time { get; init; }

    /// <summary>Seconds of set-ups, blade changes inside the job included.</summary>
    public required long SetUpSeconds { get; init; }

    /// <summary>Cautions that go with it, by id.</summary>
    public required IReadOnlyList<string> CautionIds { get; init; }
}
