using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>Holds every nest against the independent verifier and withholds one that breaks a rule.</summary>
/// <param name="nester">Makes the nests.</param>
/// <param name="verify">Finds the rules that a nest breaks.</param>
/// <param name="log">Takes word of a nest that was withheld: a fault of the engine.</param>
internal sealed class CheckedNester(INester nester, Func<NestProblem, Nest, IReadOnlyList<Violation>> verify, Action<Violation> log) : INester
{
    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        var nest = nester.Solve(problem, effort, cancellation);
        var violations = verify(problem, nest);
        if (violations.Count == 0)
            return nest;
        log(violations[0]);
        return Withheld(problem, nest.StoppedBy);
    }

    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) => nester.Bound(problem, effort, cancellation);

    private static Nest Withheld(NestProblem problem, StoppedBy stoppedBy) => new()
    {
        Layouts = [],
        Unplaced = [.. problem.Lines.Select(line => new UnplacedPieces(line.Ref, line.Quantity, UnplacedReason.NotVerified))],
        ValueMicros = 0,
        BoundMicros = 0,
        StoppedBy = stoppedBy,
    };
}
