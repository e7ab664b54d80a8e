using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>What a calculation gave, or why it was not made.</summary>
internal sealed record Calculated(Outcome? Outcome, ProblemJson? Refusal);
