using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Orders;

/// <summary>Orders from wire to trade; the rules have passed.</summary>
public static class OrderMapping
{
    /// <summary>The orders by id, their lines by id, ordinal.</summary>
    public static IReadOnlyList<SalesOrder> ToSalesOrders(this IEnumerable<OrderJson> orders, LengthScale scale, Materials materials) =>
        [.. orders.OrderBy(order => order.OrderId, StringComparer.Ordinal).Select(order => ToSalesOrder(order, scale, materials))];

    /// <summary>A line of an order; its section and grade are known.</summary>
    public static OrderLine ToOrderLine(this OrderLineJson line, string orderId, LengthScale scale, Materials materials) => new()
    {
        Ref = new(orderId, line.LineId),
        Section = materials.Section(line.Section),
        Grade = materials.Grade(line.Grade),
        Substitutes = materials.Substitutes(line.Grade, line.Substitutes),
        Length = scale.Read(line),
        LengthAt = line.LengthAt,
        Quantity = line.Quantity,
        Tolerance = line.Tolerance.ToTolerance(scale),
        Under = line.Under,
        Over = line.Over,
        FirstEnd = line.FirstEnd.ToEndCut(),
        SecondEnd = line.SecondEnd.ToEndCut(),
        Owner = line.Owner,
        Plant = line.Plant,
        Certificate = line.Certificate.ToCertificate(),
        HeatRule = line.HeatRule,
        Heat = line.Heat,
    };

    /// <summary>The names of grades that a line uses, with the places where they stand.</summary>
    public static IEnumerable<(string? Name, string Pointer)> GradeUses(this OrderLineJson line, string pointer) =>
        line.Substitutes.Select((grade, i) => ((string?)grade, $"{pointer}/substitutes/{i}")).Prepend((line.Grade, $"{pointer}/grade"));

    /// <summary>A tolerance.</summary>
    public static Tolerance ToTolerance(this ToleranceJson tolerance, LengthScale scale) => new(scale.Read(tolerance.Plus), scale.Read(tolerance.Minus));

    /// <summary>The length that is cut, as it is written in answers; null where it is the ordered one.</summary>
    public static decimal? WriteAimedLength(this OrderLine line, LengthScale scale) => line.AimedLength == line.Length ? null : scale.Write(line.AimedLength);

    /// <summary>An end.</summary>
    public static EndCut ToEndCut(this EndCutJson end) =>
        new(Angle.FromDegrees(end.HeightAngle), Angle.FromDegrees(end.WidthAngle));

    /// <summary>An end as it is written in answers; null where square.</summary>
    public static EndCutJson? ToJson(this EndCut end) =>
        end.IsSquare ? null : new() { HeightAngle = end.HeightAngle.Degrees, WidthAngle = end.WidthAngle.Degrees };

    private static SalesOrder ToSalesOrder(OrderJson order, LengthScale scale, Materials materials) => new()
    {
        OrderId = order.OrderId,
        Due = order.Due,
        Release = order.Release,
        CostPerHourLate = new(order.CostPerHourLate),
        Lines = [.. order.Lines.OrderBy(line => line.LineId, StringComparer.Ordinal).Select(line => line.ToOrderLine(order.OrderId, scale, materials) with { Priority = order.Priority })],
    };
}
