namespace SawEngine.Core.Scheduling;

/// <summary>
/// An operator. Operators who attend the same saws are a team; two teams have no saw in common. At every moment the saws of a team that are at work attended are no
/// more than its operators on shift attend; and each set-up part, blade change and crane load has one operator's hands to itself.
/// </summary>
/// <param name="OperatorId">Id, unique.</param>
/// <param name="Windows">When on shift: ascending, disjoint, not touching.</param>
/// <param name="SawIds">The saws that are attended, by id.</param>
/// <param name="MostSaws">How many of them at a time, at least 1.</param>
public sealed record ScheduleOperator(string OperatorId, IReadOnlyList<TimeWindow> Windows, IReadOnlyList<string> SawIds, int MostSaws);
