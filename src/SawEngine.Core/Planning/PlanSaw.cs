using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>A saw, as it cuts and as the schedule sees it.</summary>
/// <param name="Saw">The saw.</param>
/// <param name="Schedule">When and how it runs, in whole seconds since the start of the plan.</param>
public sealed record PlanSaw(Saw Saw, ScheduleSaw Schedule)
{
    /// <summary>A saw that runs in its attended time alone.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="windows">Attended time: ascending, disjoint, not touching.</param>
    public PlanSaw(Saw saw, IReadOnlyList<TimeWindow> windows) : this(saw, ScheduleSaw.Of(saw, windows))
    {
    }
}
