using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>A rule that an edited nest breaks, and where.</summary>
/// <param name="Place">Where.</param>
/// <param name="Code">The rule.</param>
/// <param name="Detail">What breaks it.</param>
internal sealed record FoundViolation(EditedPlace Place, string Code, string Detail)
{
    /// <summary>Whether the layout breaks it by itself, whatever the others are.</summary>
    public bool IsOfLayout { get; init; }

    public NestViolationJson ToJson() => new() { Pointer = Place.Pointer, Code = Code, Detail = Quoted.Plain(Detail) };
}
