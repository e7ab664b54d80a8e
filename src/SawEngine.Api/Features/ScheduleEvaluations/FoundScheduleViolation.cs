namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A rule that an edited schedule breaks, and where.</summary>
/// <param name="Place">Place in the list of the jobs; that of their number for what is about none of them.</param>
/// <param name="Pointer">The place as a JSON Pointer fragment.</param>
/// <param name="Code">The rule.</param>
/// <param name="Detail">What breaks it.</param>
internal sealed record FoundScheduleViolation(int Place, string Pointer, string Code, string Detail);
