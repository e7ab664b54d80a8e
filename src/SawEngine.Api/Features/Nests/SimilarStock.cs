using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Nests;

/// <summary>Finds stock whose section or grade is written much like that of pieces for which there is none: one of the two may be a slip.</summary>
internal static class SimilarStock
{
    /// <summary>Comparing texts takes time, so only this many materials are looked at, and only texts as long as an id.</summary>
    private const int MostMaterials = 20;

    /// <summary>A warning for each material that no stock is of though some is written alike, at the first piece of it.</summary>
    public static IEnumerable<WarningJson> Warnings(NestProblemRequest request, NestMaterials materials)
    {
        var stock = request.Stock.Select(materials.Of).ToHashSet();
        return Enumerable.Range(0, request.Pieces.Count)
            .Where(i => !stock.Contains(materials.Of(request.Pieces[i])) && !materials.SubstitutesOf(request.Pieces[i]).Any(stock.Contains))
            .DistinctBy(i => materials.Of(request.Pieces[i]))
            .Take(MostMaterials)
            .Select(i => Warning(i, request.Pieces[i], materials, stock))
            .OfType<WarningJson>();
    }

    private static WarningJson? Warning(int index, PieceJson piece, NestMaterials materials, HashSet<NestMaterial> stock)
    {
        var (wanted, written) = (materials.Of(piece), materials.AsWritten(piece));
        var ofSection = stock.Where(material => material.Section == wanted.Section).ToList();
        return ofSection.Count == 0
            ? Warning(index, "section", written.Section, stock.Select(material => material.Section))
            : Warning(index, "grade", written.Grade, ofSection.Select(material => material.Grade));
    }

    private static WarningJson? Warning(int index, string member, string? written, IEnumerable<string?> offered) =>
        written is { Length: <= Limits.IdLength } && NearestName.Of(written, Comparable(offered)) is { } nearest
            ? new()
            {
                Code = WarningCode.SimilarStockNotUsed,
                Pointer = $"#/pieces/{index}/{member}",
                Detail = $"No stock is of {member} {Quoted.Text(written)}; the nearest that is offered is {Quoted.Text(nearest)}, which is another {member}.",
            }
            : null;

    private static IEnumerable<string> Comparable(IEnumerable<string?> names) =>
        names.OfType<string>().Where(name => name.Length <= Limits.IdLength).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
}
