using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>Makes one nesting problem for each section and grade that is wanted, or for those that substitutes join, in canonical order. Stock that nothing is cut from is left out.</summary>
internal static class NestGroups
{
    public static IReadOnlyList<NestProblem> Of(NestProblemRequest request, NestMaterials materials)
    {
        var offered = request.Stock.Select(materials.Of).ToHashSet();
        var all = request.Pieces.Select(materials.Of).Concat(offered).Distinct()
            .OrderBy(material => material.Section, StringComparer.Ordinal).ThenBy(material => material.Grade, StringComparer.Ordinal);
        var links = request.Pieces.SelectMany(piece => materials.SubstitutesOf(piece).Where(offered.Contains).Select(substitute => (materials.Of(piece), substitute)));
        var groups = JoinedMaterials.Of(all, links);
        var stock = request.Stock.ToLookup(item => groups[materials.Of(item)]);
        return
        [
            .. request.Pieces.GroupBy(piece => groups[materials.Of(piece)])
                .OrderBy(group => group.Key.Section, StringComparer.Ordinal)
                .ThenBy(group => group.Key.Grade, StringComparer.Ordinal)
                .Select(group => Problem(request, [.. group], [.. stock[group.Key]], materials)),
        ];
    }

    /// <summary>Everything as one problem, in which not all stock serves all pieces: what an evaluation is held against.</summary>
    public static NestProblem Whole(NestProblemRequest request, NestMaterials materials) => Problem(request, request.Pieces, request.Stock, materials);

    public static bool IsMitered(PieceJson piece) => IsMitered(piece.FirstEnd) || IsMitered(piece.SecondEnd);

    private static bool IsMitered(EndCutJson? end) => end is not null && (end.HeightAngle != 0 || end.WidthAngle != 0);

    private static NestProblem Problem(NestProblemRequest request, IReadOnlyList<PieceJson> pieces, IReadOnlyList<NestStockJson> stock, NestMaterials materials)
    {
        // Only miters and cut bundles need the shape of the section; else it is enough that materials are the same.
        var shaped = pieces.Where(piece => request.Cut.Bundle is not null || IsMitered(piece)).Select(piece => materials.Of(piece).Section).ToHashSet(StringComparer.Ordinal);
        // Grades tell pieces and stock apart only where substitutes let them meet; there the catalog knows them.
        var joined = pieces.Where(piece => piece.Substitutes.Count > 0).SelectMany(piece => materials.SubstitutesOf(piece).Prepend(materials.Of(piece)))
            .Select(material => material.Grade).ToHashSet(StringComparer.Ordinal);
        var scale = new LengthScale(request.LengthUnit);
        return new()
        {
            Lines =
            [
                .. pieces.Select(piece => Line(piece, Of(materials.Of(piece)), scale) with
                {
                    Grade = GradeOf(materials.Of(piece)),
                    Substitutes = materials.Known.Substitutes(piece.Grade, piece.Substitutes),
                }).OrderBy(line => line.Ref),
            ],
            Stock = [.. stock.Select(item => Item(item, Of(materials.Of(item)), scale, request.IsCosted) with { Grade = GradeOf(materials.Of(item)) }).OrderBy(item => item.StockId, StringComparer.Ordinal)],
            Rules = Rules(request.Cut, scale),
            Remnants = request.Remnants.ToRules(scale, request.IsCosted),
            CostPerCutMicros = scale.ReadMicros(request.Cut.CostPerCut, request.IsCosted),
        };

        Grade? GradeOf(NestMaterial material) => material.Grade is { } grade && joined.Contains(grade) ? materials.Known.Grade(grade) : null;

        Section? Of(NestMaterial material) => shaped.Contains(material.Section) ? materials.Shape(material) : null;
    }

    private static OrderLine Line(PieceJson piece, Section? section, LengthScale scale) => new()
    {
        Ref = new("", piece.PieceId),
        Section = section,
        Length = scale.Read(piece),
        LengthAt = piece.LengthAt,
        Quantity = piece.Quantity,
        Tolerance = piece.Tolerance.ToTolerance(scale),
        Priority = piece.Priority,
        Under = piece.Under,
        Over = piece.Over,
        FirstEnd = piece.FirstEnd?.ToEndCut() ?? EndCut.Square,
        SecondEnd = piece.SecondEnd?.ToEndCut() ?? EndCut.Square,
        Owner = piece.Owner,
        Plant = piece.Plant,
        Certificate = piece.Certificate.ToCertificate(),
        HeatRule = piece.HeatRule,
        Heat = piece.Heat,
    };

    private static StockItem Item(NestStockJson item, Section? section, LengthScale scale, bool isMoney)
    {
        var length = scale.Read(item);
        return new()
        {
            StockId = item.StockId,
            Kind = item.Kind,
            Section = section,
            Length = length,
            Quantity = item.Kind == StockKind.Remnant ? 1 : item.Quantity,
            EndCondition = item.EndCondition,
            CostMicros = item.Cost is { } cost ? (long)(cost * 1_000_000m) : length.Nanometers,
            PullCostMicros = scale.ReadMicros(item.PullCost, isMoney),
            Heat = item.Heat,
            Certificate = item.Certificate.ToCertificate(),
            Owner = item.Owner,
            Plant = item.Plant,
            ForeignPlantCostMicros = item.ForeignPlantCost is { } bringing ? scale.ReadMicros(bringing, isMoney) : null,
            ReservedFor = item.ReservedFor is { } ids ? [.. ids.Order(StringComparer.Ordinal)] : null,
            Zones = [.. item.Zones.Select(zone => new BarZone(scale.Read(zone.From), scale.Read(zone.To), zone.Kind))],
            Location = item.Location,
            LeadDays = item.LeadDays,
        };
    }

    private static CutRules Rules(NestCutRulesJson cut, LengthScale scale)
    {
        var trim = scale.Read(cut.Trim);
        return new()
        {
            Kerf = scale.Read(cut.Kerf),
            Trim = new Dictionary<EndCondition, Length>
            {
                [EndCondition.Sheared] = trim,
                [EndCondition.FlameCut] = trim,
                [EndCondition.Rolled] = trim,
            },
            Tail = scale.Read(cut.Tail),
            ShortestPiece = scale.Read(cut.ShortestPiece),
            LongestPiece = scale.Read(cut.LongestPiece),
            ThinnestSlice = scale.Read(cut.ThinnestSlice),
            Bundle = cut.Bundle.ToBundle(scale),
        };
    }
}
