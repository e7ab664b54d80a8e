using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>What a caller should know of a nesting request and the layouts for it, in the order in which they are cut.</summary>
internal static class NestWarnings
{
    public static IEnumerable<WarningJson> Of(NestProblemRequest request, NestMaterials materials, IReadOnlyList<BarLayout> layouts)
    {
        foreach (var warning in materials.Known.AmbiguousGrades(GradesOf(request)).Concat(SimilarStock.Warnings(request, materials)))
            yield return warning;
        if (TrimIsNotUsed(request))
            yield return TrimWarning();
        if (NotKept(request, layouts) is var notKept and > 0)
            yield return RemnantWarning(notKept);
        if (request.MostOpenLines is { } most && OpenLines.Most(layouts) is var open && open > most)
            yield return OpenLinesWarning(open);
        foreach (var warning in SubstituteUses.Warnings(layouts, materials.Known, PiecesOf(request)))
            yield return warning;
        var used = layouts.Select(layout => layout.Stock.StockId).ToHashSet(StringComparer.Ordinal);
        foreach (var warning in NominalLength.Warnings(request.Stock, item => item.StockId, item => item.NominalLength, used, new(request.LengthUnit)))
            yield return warning;
    }

    private static IEnumerable<SubstituteUses.Line> PiecesOf(NestProblemRequest request) =>
        request.Pieces.Select((piece, i) => new SubstituteUses.Line(new("", piece.PieceId), piece.Grade, piece.Substitutes, $"#/pieces/{i}"));

    private static IEnumerable<(string?, string)> GradesOf(NestProblemRequest request) =>
        request.Pieces.SelectMany((piece, i) => piece.Substitutes.Select((grade, k) => ((string?)grade, $"#/pieces/{i}/substitutes/{k}")).Prepend((piece.Grade, $"#/pieces/{i}/grade"))).Concat(request.Stock.Select((item, i) => (item.Grade, $"#/stock/{i}/grade")));

    private static bool TrimIsNotUsed(NestProblemRequest request) => request.Cut.Trim > 0 && request.Stock.All(item => item.EndCondition == EndCondition.Sawn);

    private static WarningJson TrimWarning() => new()
    {
        Code = WarningCode.TrimNotUsed,
        Pointer = "#/cut/trim",
        Detail = "All stock has sawn ends, which need no trim; state `endCondition` where an end is raw.",
    };

    private static WarningJson OpenLinesWarning(int open) => new()
    {
        Code = WarningCode.OpenLinesLimitExceeded,
        Pointer = "#/mostOpenLines",
        Detail = $"Order lines that are begun and not finished at once, in the order of `sequence`: {open}.",
    };

    /// <summary>Remainders that are scrap only because no more remnants may be left.</summary>
    private static long NotKept(NestProblemRequest request, IReadOnlyCollection<BarLayout> layouts) => RemnantLimit.NotKept(
        layouts, new(request.Remnants.ToRules(new(request.LengthUnit), request.IsCosted), ScrapValueMicrosPerKilogram: 0));

    private static WarningJson RemnantWarning(long notKept) => new()
    {
        Code = WarningCode.RemnantLimitReached,
        Pointer = "#/remnants/mostNew",
        Detail = $"Remainders that are long enough to be kept, but count as scrap because no more remnants may be left: {notKept}.",
    };
}
