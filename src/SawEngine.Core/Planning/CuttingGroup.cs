using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Planning;

/// <summary>Order lines of one section and grade.</summary>
/// <param name="Section">The section as ordered.</param>
/// <param name="Grade">The grade.</param>
/// <param name="Lines">The lines, by <see cref="OrderLine.Ref"/>.</param>
internal sealed record CuttingGroup(Section Section, Grade Grade, IReadOnlyList<OrderLine> Lines)
{
    /// <summary>The groups of all lines, by section and grade, ordinal.</summary>
    public static IReadOnlyList<CuttingGroup> Of(IEnumerable<OrderLine> lines) =>
        lines.GroupBy(line => (Section: line.Section!.Designation, Grade: line.Grade!.Designation))
            .OrderBy(group => group.Key.Section, StringComparer.Ordinal).ThenBy(group => group.Key.Grade, StringComparer.Ordinal)
            .Select(group => group.OrderBy(line => line.Ref).ToList())
            .Select(members => new CuttingGroup(members[0].Section!, members[0].Grade!, members))
            .ToList();
}
