using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>A change of a clean schedule, or of what it is held against, and the codes of the rules that it breaks.</summary>
internal sealed record Mutant(string Name, Func<Schedule, Schedule> Change, params string[] Codes)
{
    public Func<ScheduleProblem, ScheduleProblem> Against { get; init; } = problem => problem;

    /// <summary>The same schedule against another problem.</summary>
    public static Mutant Of(string name, Func<ScheduleProblem, ScheduleProblem> against, params string[] codes) => new(name, schedule => schedule, codes) { Against = against };
}
