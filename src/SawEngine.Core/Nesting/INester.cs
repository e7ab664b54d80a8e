namespace SawEngine.Core.Nesting;

/// <summary>A strategy that nests. Every strategy passes the same contract tests: clean by the verifier, deterministic, honors cancellation.</summary>
public interface INester
{
    /// <summary>The best verified nest that the effort allows. Cancellation returns the best so far.</summary>
    Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation);

    /// <summary>No nest of all the pieces costs less than this, in millionths of the objective's unit.</summary>
    long Bound(NestProblem problem, Effort effort, CancellationToken cancellation);
}
