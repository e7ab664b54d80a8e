using FluentValidation;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>Rules of a nesting request that bounds on single members cannot state.</summary>
public sealed class NestProblemRequestRules : AbstractValidator<NestProblemRequest>
{
    public NestProblemRequestRules(Catalogs catalogs)
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
        RuleFor(r => r).Custom(SectionsAndGrades);
        RuleFor(r => r).Custom((request, context) => MiteredSections(request, context, catalogs));
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

    private static void SectionsAndGrades(NestProblemRequest request, ValidationContext<NestProblemRequest> context)
    {
        OnAllWhereSeveral(request, context, FaultCode.SectionRequired, "section", p => p.Section, s => s.Section);
        OnAllWhereSeveral(request, context, FaultCode.GradeRequired, "grade", p => p.Grade, s => s.Grade);
    }

    private static void OnAllWhereSeveral(
        NestProblemRequest request,
        ValidationContext<NestProblemRequest> context,
        string code,
        string name,
        Func<PieceJson, string?> ofPiece,
        Func<NestStockJson, string?> ofStock)
    {
        if (NestGroups.Stated(request, ofPiece, ofStock).Count <= 1)
            return;
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

    private static void MiteredSections(NestProblemRequest request, ValidationContext<NestProblemRequest> context, Catalogs catalogs)
    {
        var only = NestGroups.OnlySection(request);
        // Suggestions are dear; faults beyond those that are listed do without.
        var suggestions = Limits.FaultsReported;
        for (var i = 0; i < request.Pieces.Count; i++)
        {
            if (NestGroups.IsMitered(request.Pieces[i]))
                MiteredSection(request.Pieces[i].Section, only, $"Pieces[{i}]", context, catalogs, ref suggestions);
        }
    }

    private static void MiteredSection(
        string? stated, string? only, string piece, ValidationContext<NestProblemRequest> context, Catalogs catalogs, ref int suggestions)
    {
        if ((stated ?? only) is not { } section)
            context.Fault(piece, FaultCode.SectionRequired, "`section` is missing; the size of a mitered piece's section must be known.");
        else if (catalogs.FindSection(section) is null)
        {
            var path = stated is null ? piece : piece + ".Section";
            var near = suggestions-- > 0 ? $" Near to it: {string.Join(", ", catalogs.NearestSections(section))}." : "";
            var detail = $"{Quoted.Text(section)} is not in the catalog; the size of a mitered piece's section must be known.{near}";
            context.Fault(path, FaultCode.UnknownSection, detail);
        }
    }
}
