using FluentValidation;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>Rules of a nesting request that bounds on single members cannot state.</summary>
public sealed class NestProblemRequestRules : AbstractValidator<NestProblemRequest>
{
    public NestProblemRequestRules()
    {
        this.Unique(r => r.Pieces, p => p.PieceId, nameof(PieceJson.PieceId));
        this.Unique(r => r.Stock, s => s.StockId, nameof(NestStockJson.StockId));
        this.CostOnAllOrNone(r => r.Stock, s => s.Cost);
        RuleFor(r => r.Pieces).Custom(TotalQuantity);
        RuleForEach(r => r.Pieces).Custom(Heat);
        RuleForEach(r => r.Pieces).Custom((piece, context) =>
        {
            context.CheckTolerance(piece.Tolerance, piece, new(context.InstanceToValidate.LengthUnit));
            context.CheckUnder(piece.Under, piece.Quantity);
        });
        RuleForEach(r => r.Stock).Custom(Quantity);
        RuleForEach(r => r.Stock).Custom((item, context) =>
        {
            var scale = new LengthScale(context.InstanceToValidate.LengthUnit);
            context.CheckZones(item.Zones, item.Quantity, item.Kind == StockKind.Remnant, item, scale);
            context.CheckNominalLength(item.NominalLength, item, scale);
        });
        RuleFor(r => r.Cut.LongestPiece)
            .Must((r, longest) => longest is null || r.Cut.ShortestPiece <= longest)
            .WithFault(FaultCode.MinAboveMax, "The `longestPiece` is shorter than the `shortestPiece`.");
        RuleFor(r => r.Remnants!).SetValidator(new RemnantRulesRules()).When(r => r.Remnants is not null);
        RuleFor(r => r.Cut.Bundle!).SetValidator(new BundleCapacityRules()).When(r => r.Cut.Bundle is not null);
        RuleFor(r => r).Custom((request, context) =>
        {
            var materials = new NestMaterials(request);
            SectionsAndGrades(request, context, materials);
            MiteredSections(request, context, materials);
            Substitutes(request, context, materials);
        });
    }

    private static void TotalQuantity(IReadOnlyList<PieceJson> pieces, ValidationContext<NestProblemRequest> context)
    {
        var total = pieces.Sum(p => (long)p.Quantity + p.Over);
        if (total > Limits.TotalQuantity)
            context.Fault("", FaultCode.TooMuchWork, $"The quantities add up to {total} pieces; at most {Limits.TotalQuantity} can be nested in one request.");
    }

    private static void Heat(PieceJson piece, ValidationContext<NestProblemRequest> context)
    {
        if (piece.HeatRule == HeatRule.Named && piece.Heat is null)
            context.Fault("", FaultCode.HeatRequired, "`heatRule` is named, but `heat` does not name one.");
        if (piece.HeatRule != HeatRule.Named && piece.Heat is not null)
            context.Fault("Heat", FaultCode.HeatNotUsed, "`heat` is stated, but `heatRule` is not named.");
    }

    private static void Quantity(NestStockJson item, ValidationContext<NestProblemRequest> context)
    {
        if (item.Kind == StockKind.Bar && item.Quantity is null)
            context.Fault("", FaultCode.QuantityRequired, "`quantity` is missing; bars on hand need it.");
        if (item.Kind == StockKind.Remnant && item.Quantity is not (null or 1))
            context.Fault("Quantity", FaultCode.RemnantIsSingle, "A remnant is single: leave `quantity` out or state 1.");
    }

    private static void SectionsAndGrades(NestProblemRequest request, ValidationContext<NestProblemRequest> context, NestMaterials materials)
    {
        if (materials.Sections.Count > 1)
            OnAll(request, context, FaultCode.SectionRequired, "section", p => p.Section, s => s.Section);
        if (materials.Grades.Count > 1)
            OnAll(request, context, FaultCode.GradeRequired, "grade", p => p.Grade, s => s.Grade);
    }

    private static void OnAll(
        NestProblemRequest request,
        ValidationContext<NestProblemRequest> context,
        string code,
        string name,
        Func<PieceJson, string?> ofPiece,
        Func<NestStockJson, string?> ofStock)
    {
        for (var i = 0; i < request.Pieces.Count; i++)
            FaultWhereAbsent(ofPiece(request.Pieces[i]), $"Pieces[{i}]");
        for (var i = 0; i < request.Stock.Count; i++)
            FaultWhereAbsent(ofStock(request.Stock[i]), $"Stock[{i}]");

        void FaultWhereAbsent(string? value, string path)
        {
            if (value is null)
                context.Fault(path, code, $"`{name}` is missing; it may be left out only where all pieces and stock are of one {name}.");
        }
    }

    /// <summary>Where substitutes let grades meet, the catalog must know them: a slip would not be found otherwise.</summary>
    private static void Substitutes(NestProblemRequest request, ValidationContext<NestProblemRequest> context, NestMaterials materials)
    {
        for (var i = 0; i < request.Pieces.Count; i++)
        {
            var piece = request.Pieces[i];
            if (piece.Substitutes.Count == 0)
                continue;
            if (piece.Grade is { } grade)
                FaultWhereUnknown(grade, $"Pieces[{i}].Grade", "has substitutes");
            else if (materials.Grades.Count <= 1)
                context.Fault($"Pieces[{i}]", FaultCode.GradeRequired, "`grade` is missing; `substitutes` stand in for a grade that is stated.");
            for (var k = 0; k < piece.Substitutes.Count; k++)
                FaultWhereUnknown(piece.Substitutes[k], $"Pieces[{i}].Substitutes[{k}]", "is a substitute");
        }

        void FaultWhereUnknown(string grade, string path, string why)
        {
            if (!materials.Known.KnowsGrade(grade))
                context.Fault(path, FaultCode.UnknownGrade, $"{Quoted.Text(grade)} {why}, but is not a grade of the catalog.{materials.Known.NearestGrades(grade)}");
        }
    }

    private static void MiteredSections(NestProblemRequest request, ValidationContext<NestProblemRequest> context, NestMaterials materials)
    {
        for (var i = 0; i < request.Pieces.Count; i++)
        {
            if (NestGroups.IsMitered(request.Pieces[i]))
                MiteredSection(request.Pieces[i], $"Pieces[{i}]", context, materials);
        }
    }

    private static void MiteredSection(PieceJson piece, string path, ValidationContext<NestProblemRequest> context, NestMaterials materials)
    {
        if (materials.Of(piece).Section is not { } section)
            context.Fault(path, FaultCode.SectionRequired, "`section` is missing; the size of a mitered piece's section must be known.");
        else if (!materials.Known.KnowsSection(section))
        {
            var detail = $"{Quoted.Text(section)} is not in the catalog; the size of a mitered piece's section must be known.{materials.Known.NearestSections(section)}";
            context.Fault(piece.Section is null ? path : path + ".Section", FaultCode.UnknownSection, detail);
        }
    }
}
