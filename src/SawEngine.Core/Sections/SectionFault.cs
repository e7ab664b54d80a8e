namespace SawEngine.Core.Sections;

/// <summary>Why dimensions make no section.</summary>
/// <param name="Member">The member at fault, as written in JSON (camelCase), with the place in a list: <c>contactWidths[2].depth</c>.</param>
/// <param name="Code">
/// One of <c>missing</c>, <c>not_used_by_shape</c>, <c>must_be_positive</c>, <c>must_not_be_negative</c>, <c>too_small</c>, <c>too_large</c>,
/// <c>too_few_points</c>, <c>too_many_points</c>, <c>repeated_point</c>, <c>crosses_itself</c>,
/// <c>depths_not_ascending</c>, <c>extent_disagrees</c>, <c>area_disagrees</c>.
/// </param>
/// <param name="Detail">One sentence for people.</param>
public sealed record SectionFault(string Member, string Code, string Detail);
