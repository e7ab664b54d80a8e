using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Planning;

/// <summary>Order lines of one section and grade, or of the grades that substitutes join.</summary>
/// <param name="Section">The section as ordered.</param>
/// <param name="Grades">The grades of bars that may serve them, by designation, ordinal.</param>
/// <param name="Lines">The lines, by <see cref="OrderLine.Ref"/>.</param>
internal sealed record CuttingGroup(Section Section, IReadOnlyList<Grade> Grades, IReadOnlyList<OrderLine> Lines)
{
    /// <summary>The groups of all lines, by section and grade, ordinal. A substitute of which there is no stock joins nothing.</summary>
    public static IReadOnlyList<CuttingGroup> Of(IEnumerable<OrderLine> lines, IEnumerable<StockItem> stock)
    {
        var members = lines.Select(line => (Line: line, Material: MaterialOf(line.Section, line.Grade))).ToList();
        var offered = stock.Where(item => item.Quantity != 0).Select(item => MaterialOf(item.Section, item.Grade)).ToHashSet();
        var links = members.SelectMany(member => Substitutes(member.Line).Select(grade => (member.Material, MaterialOf(member.Line.Section, grade)))).ToList();
        var groups = JoinedMaterials.Of(
            members.Select(member => member.Material).Concat(offered).Distinct().OrderBy(material => material.Section, StringComparer.Ordinal).ThenBy(material => material.Grade, StringComparer.Ordinal),
            links);
        return members.GroupBy(member => groups[member.Material], member => member.Line)
            .OrderBy(group => group.Key.Section, StringComparer.Ordinal).ThenBy(group => group.Key.Grade, StringComparer.Ordinal)
            .Select(group => new CuttingGroup(group.First().Section!, GradesOf(group.SelectMany(line => Substitutes(line).Prepend(line.Grade!))), group.OrderBy(line => line.Ref).ToList()))
            .ToList();

        IEnumerable<Grade> Substitutes(OrderLine line) => line.Substitutes.Where(grade => offered.Contains(MaterialOf(line.Section, grade)));
    }

    /// <summary>Some of the lines, with the grades that may serve these.</summary>
    public CuttingGroup For(IReadOnlyList<OrderLine> lines) => this with { Lines = lines, Grades = Grades.Where(grade => lines.Any(line => IsServedBy(line, grade))).ToList() };

    /// <summary>Whether a line may be cut from bars of a grade.</summary>
    public static bool IsServedBy(OrderLine line, Grade grade) => grade.Equals(line.Grade) || line.Substitutes.Contains(grade);

    private static List<Grade> GradesOf(IEnumerable<Grade> grades) => grades.Distinct().OrderBy(grade => grade.Designation, StringComparer.Ordinal).ToList();

    private static (string Section, string Grade) MaterialOf(Section? section, Grade? grade) => (section!.Designation, grade!.Designation);
}
