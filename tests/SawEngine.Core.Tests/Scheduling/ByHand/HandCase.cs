using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>A schedule by hand that is clean, and changes that each break one rule.</summary>
internal sealed record HandCase(string Name, ScheduleProblem Problem, Schedule Good, IReadOnlyList<Mutant> Mutants)
{
    public static IReadOnlyList<HandCase> All { get; } =
    [
        BasicsByHand.Case, SetUpsByHand.Case, OvertimeByHand.Case, UnattendedByHand.Case, BladesByHand.Case, OperatorsByHand.Case, CranesByHand.Case,
        FrozenByHand.Case, PrecedenceByHand.Case, PartsByHand.Case,
    ];
}
