using SawEngine.Api.Wire;

namespace SawEngine.Api.Operations;

/// <summary>A refusal of a request that has faults.</summary>
/// <param name="Type">Whether shape or rules are at fault.</param>
/// <param name="Faults">The faults.</param>
public sealed record Refused(ProblemType Type, FaultList Faults) : Outcome
{
    /// <summary>The problem document.</summary>
    public ProblemJson ToProblem() => ProblemJson.Of(Type, Faults);
}
