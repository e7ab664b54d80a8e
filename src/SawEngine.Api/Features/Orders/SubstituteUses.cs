using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.Orders;

/// <summary>Tells a caller which lines are cut from a grade that they allow in place of their own.</summary>
internal static class SubstituteUses
{
    /// <summary>A line as the request states it.</summary>
    /// <param name="Ref">The line.</param>
    /// <param name="Grade">Its own grade.</param>
    /// <param name="Substitutes">What it allows in place of that.</param>
    /// <param name="Pointer">Where it stands.</param>
    public sealed record Line(PieceRef Ref, string? Grade, IReadOnlyList<string> Substitutes, string Pointer);

    /// <summary>A warning for each substitute of a line that pieces of it are cut from, at its place in the line; by line and grade.</summary>
    public static IEnumerable<WarningJson> Warnings(IEnumerable<BarLayout> layouts, Materials materials, IEnumerable<Line> lines)
    {
        var cut = layouts.Where(layout => layout.Stock.Grade is not null)
            .SelectMany(layout => layout.Cuts.Select(cut => (cut.Piece, Grade: layout.Stock.Grade!, layout.Repeat)))
            .GroupBy(cut => (cut.Piece, cut.Grade), cut => (long)cut.Repeat)
            .ToDictionary(cuts => cuts.Key, cuts => cuts.Sum());
        return lines.Where(line => line.Substitutes.Count > 0).OrderBy(line => line.Ref).SelectMany(line => Warnings(cut, materials, line));
    }

    /// <summary>The lines of a request's orders.</summary>
    public static IEnumerable<Line> LinesOf(IEnumerable<OrderJson> orders) =>
        orders.SelectMany((order, i) => order.Lines.Select((line, k) => new Line(new(order.OrderId, line.LineId), line.Grade, line.Substitutes, $"#/orders/{i}/lines/{k}")));

    /// <summary>The lines of a request's only order.</summary>
    public static IEnumerable<Line> LinesOf(OrderJson order) =>
        order.Lines.Select((line, i) => new Line(new(order.OrderId, line.LineId), line.Grade, line.Substitutes, $"#/order/lines/{i}"));

    private static IEnumerable<WarningJson> Warnings(Dictionary<(PieceRef, Grade), long> cut, Materials materials, Line line)
    {
        var own = line.Grade is null ? null : materials.Grade(line.Grade);
        return line.Substitutes.Select((name, index) => (Grade: materials.Grade(name)!, Index: index)).DistinctBy(substitute => substitute.Grade)
            .Where(substitute => substitute.Grade != own && cut.ContainsKey((line.Ref, substitute.Grade)))
            .OrderBy(substitute => substitute.Grade.Designation, StringComparer.Ordinal)
            .Select(substitute => new WarningJson
            {
                Code = WarningCode.SubstituteUsed,
                Pointer = $"{line.Pointer}/substitutes/{substitute.Index}",
                PieceId = line.Ref.OrderId.Length == 0 ? line.Ref.LineId : null,
                OrderId = line.Ref.OrderId.Length == 0 ? null : line.Ref.OrderId,
                LineId = line.Ref.OrderId.Length == 0 ? null : line.Ref.LineId,
                Detail = $"Pieces of {Quoted.Text(line.Ref.LineId)} that are cut from {substitute.Grade.Designation} in place of {own?.Designation}: {cut[(line.Ref, substitute.Grade)]}.",
            });
    }
}
