using FluentValidation;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Orders;

/// <summary>Rules of an order line that bounds on its members cannot state.</summary>
public sealed class OrderLineRules : AbstractValidator<OrderLineJson>
{
    private const decimal LargestDegrees = 60m;
    private const decimal DegreeGrid = 0.001m;

    public OrderLineRules()
    {
        RuleFor(line => line.Section).IsKnownSection();
        RuleFor(line => line.Grade).IsKnownGrade();
        RuleForEach(line => line.Substitutes).IsKnownGrade();
        RuleFor(line => line)
            .Must(line => line.HeatRule != HeatRule.Named || line.Heat is not null)
            .WithFault(FaultCode.HeatRequired, "Name the heat in `heat`, or ask for `any` or a `single` one in `heatRule`.");
        RuleFor(line => line.Heat)
            .Must((line, heat) => line.HeatRule == HeatRule.Named || heat is null)
            .WithFault(FaultCode.HeatNotUsed, "A heat is named here, but `heatRule` does not ask for a `named` one.");
        RuleFor(line => line).Custom((line, context) =>
        {
            context.CheckTolerance(line.Tolerance, line, context.Materials().Scale);
            context.CheckUnder(line.Under, line.Quantity);
            if (FacesCross(line, context.Materials()))
                context.Fault(line.LengthText is null ? nameof(line.Length) : nameof(line.LengthText), FaultCode.MiterFacesCross, "The mitered faces cross inside the section: its shortest side would be no longer than nothing. Check length, lengthAt and the signs of the angles.");
        });
    }

    private static bool FacesCross(OrderLineJson line, Materials materials) =>
        materials.Scale.CanRead(line)
        && CanRead(line.FirstEnd)
        && CanRead(line.SecondEnd)
        && ToleranceRules.CanRead(line.Tolerance, materials.Scale)
        && materials.Section(line.Section) is { } section
        && PieceGeometry.Of(new()
        {
            Ref = default,
            Section = section,
            Length = materials.Scale.Read(line),
            Tolerance = line.Tolerance.ToTolerance(materials.Scale),
            LengthAt = line.LengthAt,
            Quantity = 1,
            FirstEnd = line.FirstEnd.ToEndCut(),
            SecondEnd = line.SecondEnd.ToEndCut(),
        }).ShortSide <= Length.Zero;

    private static bool CanRead(EndCutJson end) => CanRead(end.HeightAngle) && CanRead(end.WidthAngle);

    private static bool CanRead(decimal degrees) => Math.Abs(degrees) <= LargestDegrees && degrees % DegreeGrid == 0;
}
