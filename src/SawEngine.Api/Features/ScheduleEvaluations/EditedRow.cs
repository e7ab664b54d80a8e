using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A row of an edited schedule, and what of it has no place in any schedule.</summary>
/// <param name="Index">Its place in the list.</param>
/// <param name="Json">As it is sent.</param>
/// <param name="Broken">The rule that keeps it out; null where it can be held against the others.</param>
internal sealed record EditedRow(int Index, EditedJobJson Json, FoundScheduleViolation? Broken)
{
    /// <summary>Where it stands in the request, or where a member of it does.</summary>
    public string Pointer(string? member = null) => PointerOf(Index, member);

    /// <summary>Where a row stands in the request, or where a member of it does.</summary>
    public static string PointerOf(int index, string? member = null)
    {
        var row = JsonPointer.Item(JsonPointer.Member(JsonPointer.Member(JsonPointer.Root, "schedule"), "jobs"), index);
        return member is null ? row : JsonPointer.Member(row, member);
    }
}
