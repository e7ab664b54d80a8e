using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>Holds an edited nest against the names of sections and grades, which stand for materials that the verifier need not know, and against its own words on its stock.</summary>
internal sealed class EditedMaterials(NestEvaluationRequest request, NestMaterials materials)
{
    private readonly Dictionary<string, PieceJson> _pieces = request.Pieces.ToDictionary(piece => piece.PieceId, StringComparer.Ordinal);
    private readonly Dictionary<string, NestStockJson> _stock = request.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);

    /// <summary>The material of a stock item; none where it is not offered.</summary>
    public NestMaterial OfStock(string stockId) => _stock.TryGetValue(stockId, out var item) ? materials.Of(item) : default;

    /// <summary>The same as the request writes it.</summary>
    public NestMaterial WrittenOfStock(string stockId) => _stock.TryGetValue(stockId, out var item) ? materials.AsWritten(item) : default;

    /// <summary>The material that pieces are ordered in; none where they are not ordered.</summary>
    public NestMaterial OfPiece(string pieceId) => _pieces.TryGetValue(pieceId, out var piece) ? materials.Of(piece) : default;

    /// <summary>What a layout breaks.</summary>
    public IEnumerable<FoundViolation> Violations(int index)
    {
        var layout = request.Layouts[index];
        return _stock.TryGetValue(layout.StockId, out var item)
            ? OfStatements(index, layout, item).Concat(layout.Cuts.SelectMany((cut, k) => OfCut(new(index, k), cut, item)))
            : [];
    }

    private IEnumerable<FoundViolation> OfStatements(int index, EditedLayoutJson layout, NestStockJson item)
    {
        var (material, written) = (materials.Of(item), materials.AsWritten(item));
        (string Member, string? Stated, string? Offered, bool IsSame)[] statements =
        [
            ("section", layout.Section, written.Section, materials.Section(layout.Section) == material.Section),
            ("grade", layout.Grade, written.Grade, materials.Grade(layout.Grade) == material.Grade),
            ("heat", layout.Heat, item.Heat, layout.Heat == item.Heat),
            ("owner", layout.Owner, item.Owner, layout.Owner == item.Owner),
            ("plant", layout.Plant, item.Plant, layout.Plant == item.Plant),
        ];
        return statements.Where(statement => statement.Stated is not null && !statement.IsSame).Select(statement => new FoundViolation(
            new(index, null, statement.Member),
            NestRule.UnknownStock,
            $"Stock {Quoted.Text(item.StockId)} is offered with {statement.Member} {Named(statement.Offered)}, not {Named(statement.Stated)}."));
    }

    private IEnumerable<FoundViolation> OfCut(EditedPlace place, EditedCutJson cut, NestStockJson item)
    {
        if (!_pieces.TryGetValue(cut.PieceId, out var piece))
            yield break;
        var (ordered, offered) = (materials.Of(piece), materials.Of(item));
        var (written, onBar) = (materials.AsWritten(piece), materials.AsWritten(item));
        if (ordered.Section != offered.Section)
            yield return new(place, NestRule.Section, Detail(piece, written.Section, item, onBar.Section));
        if (ordered.Grade != offered.Grade && piece.Substitutes.All(substitute => materials.Grade(substitute) != offered.Grade))
            yield return new(place, NestRule.Grade, Detail(piece, written.Grade, item, onBar.Grade));
    }

    private static string Detail(PieceJson piece, string? ordered, NestStockJson item, string? offered) =>
        $"{Quoted.Text(piece.PieceId)} is ordered in {Named(ordered)}; {Quoted.Text(item.StockId)} is of {Named(offered)}.";

    private static string Named(string? name) => name is null ? "none" : Quoted.Text(name);
}
