using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>A saw and when it is attended.</summary>
/// <param name="Saw">The saw.</param>
/// <param name="Windows">Attended time in whole seconds since the start of the plan: ascending, disjoint, not touching.</param>
public sealed record PlanSaw(Saw Saw, IReadOnlyList<TimeWindow> Windows);
