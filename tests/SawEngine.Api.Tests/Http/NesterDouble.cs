using SawEngine.Api.Features.Service;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Tests.Http;

/// <summary>A nester that does what a test says; the probe of readiness is answered at once.</summary>
internal sealed class NesterDouble(Action<CancellationToken> work) : INester
{
    public const string Request = """{"pieces":[{"pieceId":"p","length":1,"quantity":1}],"stock":[],"cut":{"kerf":0}}""";

    public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
    {
        if (!ReferenceEquals(problem, ReadinessNest.Problem))
            work(cancellation);
        return new() { Layouts = [], Unplaced = [], ValueMicros = 0, BoundMicros = 0, StoppedBy = StoppedBy.Proof };
    }

    public long Bound(NestProblem problem, Effort effort, CancellationToken cancellation) => 0;
}
