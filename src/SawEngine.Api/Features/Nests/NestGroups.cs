using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>Makes one nesting problem for each section and grade that is wanted, in canonical order. Stock that nothing is cut from is left out.</summary>
internal static class NestGroups
{
    public static IReadOnlyList<NestGroup> Of(NestProblemRequest request, Catalogs catalogs)
    {
        var materials = new NestMaterials(request);
        var stock = request.Stock.ToLookup(materials.Of);
        return
        [
            .. request.Pieces.GroupBy(materials.Of)
                .OrderBy(group => group.Key.Section, StringComparer.Ordinal)
                .ThenBy(group => group.Key.Grade, StringComparer.Ordinal)
                .Select(group => new NestGroup(group.Key, Problem(request, [.. group], [.. stock[group.Key]], Sections(request, group, materials, catalogs), materials))),
        ];
    }

    /// <summary>Everything as one problem, in which not all stock serves all pieces: what an evaluation is held against.</summary>
    public static NestProblem Whole(NestProblemRequest request, Catalogs catalogs)
    {
        var materials = new NestMaterials(request);
        return Problem(request, request.Pieces, request.Stock, Sections(request, request.Pieces, materials, catalogs), materials);
    }

    /// <summary>The section of all where only one is stated.</summary>
    public static string? OnlySection(NestProblemRequest request) => Stated(request, p => p.Section, s => s.Section) is [var only] ? only : null;

    /// <summary>The distinct values that pieces and stock state.</summary>
    public static IReadOnlyList<string> Stated(NestProblemRequest request, Func<PieceJson, string?> ofPiece, Func<NestStockJson, string?> ofStock) =>
        [.. request.Pieces.Select(ofPiece).Concat(request.Stock.Select(ofStock)).OfType<string>().Distinct(StringComparer.Ordinal)];

    public static bool IsMitered(PieceJson piece) => IsMitered(piece.FirstEnd) || IsMitered(piece.SecondEnd);

    private static bool IsMitered(EndCutJson? end) => end is not null && (end.HeightAngle != 0 || end.WidthAngle != 0);

    /// <summary>The grade of all where only one is stated.</summary>
    public static string? OnlyGrade(NestProblemRequest request) => Stated(request, p => p.Grade, s => s.Grade) is [var only] ? only : null;

    /// <summary>Only miters and cut bundles need the shape of the section; else sections are compared by their names alone.</summary>
    private static Dictionary<string, Section?> Sections(NestProblemRequest request, IEnumerable<PieceJson> pieces, NestMaterials materials, Catalogs catalogs) =>
        pieces.Where(piece => request.Cut.Bundle is not null || IsMitered(piece)).Select(piece => materials.Of(piece).Section).OfType<string>().Distinct(StringComparer.Ordinal)
            .ToDictionary(name => name, catalogs.FindSection, StringComparer.Ordinal);

    private static NestProblem Problem(
        NestProblemRequest request, IReadOnlyList<PieceJson> pieces, IReadOnlyList<NestStockJson> stock, Dictionary<string, Section?> sections, NestMaterials materials)
    {
        var scale = new LengthScale(request.LengthUnit);
        return new()
        {
            Lines = [.. pieces.Select(piece => Line(piece, Of(materials.Of(piece)), scale)).OrderBy(line => line.Ref)],
            Stock = [.. stock.Select(item => Item(item, Of(materials.Of(item)), scale, request.IsCosted)).OrderBy(item => item.StockId, StringComparer.Ordinal)],
            Rules = Rules(request.Cut, scale),
            Remnants = request.Remnants.ToRules(scale, request.IsCosted),
            CostPerCutMicros = scale.ReadMicros(request.Cut.CostPerCut, request.IsCosted),
        };

        Section? Of(NestMaterial material) => material.Section is { } name ? sections.GetValueOrDefault(name) : null;
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
