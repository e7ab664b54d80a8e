using SawEngine.Api.Features.Stock;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>Joins the nests of all groups and writes them in the request's unit.</summary>
internal sealed class NestAnswer(NestProblemRequest request, NestMaterials materials, IReadOnlyList<(NestProblem Problem, Nest Nest)> nests)
{
    public const string Infeasible = "infeasible";

    private readonly LengthScale _scale = new(request.LengthUnit);

    /// <summary>The engine's nest for a request.</summary>
    public static NestAnswer Of(NestProblemRequest request, NestMaterials materials, INester nester, CancellationToken cancellation)
    {
        var problems = NestGroups.Of(request, materials);
        var nests = problems.Select(problem => nester.Solve(problem, request.Effort, cancellation)).ToList();
        return new(request, materials, [.. problems.Zip(nests)]);
    }

    /// <summary>The nest of each group.</summary>
    public IReadOnlyList<(NestProblem Problem, Nest Nest)> Nests => nests;

    /// <summary>The layouts of all groups, one group after the other, in the order in which they are cut.</summary>
    public IEnumerable<BarLayout> Layouts => nests.SelectMany(n => n.Nest.Layouts);

    public NestResponse Write(OperationContext context) => new()
    {
        RequestDigest = context.RequestDigest,
        LengthUnit = WireEnum.Text(request.LengthUnit),
        Status = Status(),
        Objective = Objective(),
        Layouts = LayoutsById(),
        Unplaced = [.. nests.SelectMany(n => n.Nest.Unplaced).OrderBy(unplaced => unplaced.Piece).Select(Unplaced)],
        Claims = Claims(),
        Totals = Totals(),
        StoppedBy = WireEnum.Text(Weakest()),
        Warnings = context.Warnings,
        Timing = new() { TotalMs = context.ElapsedMs },
    };

    private static UnplacedPieceJson Unplaced(UnplacedPieces unplaced) => new()
    {
        PieceId = unplaced.Piece.LineId,
        Quantity = unplaced.Quantity,
        Reason = unplaced.Reason,
    };

    private string Status() =>
        !Layouts.Any() ? Infeasible
        : nests.Any(n => n.Nest.Unplaced.Any(pieces => !pieces.IsAccepted)) ? "partial"
        : nests.All(n => n.Nest.Unplaced.Count == 0 && n.Nest.BoundMicros >= n.Nest.ValueMicros) ? "optimal"
        : "feasible";

    public NestObjectiveJson Objective()
    {
        var value = nests.Sum(n => n.Nest.ValueMicros);
        var bound = nests.Sum(n => Math.Min(n.Nest.BoundMicros, n.Nest.ValueMicros));
        return new()
        {
            Value = _scale.WriteMicros(value, request.IsCosted),
            Bound = _scale.WriteMicros(bound, request.IsCosted),
            Gap = Gap.Of(value, bound),
        };
    }

    private StoppedBy Weakest() => nests.Max(n => n.Nest.StoppedBy);

    /// <summary>Layouts of one stock item are numbered in the order in which they are cut.</summary>
    public List<NestLayoutJson> LayoutsById()
    {
        var ofStock = new Dictionary<string, int>(StringComparer.Ordinal);
        var written = request.Stock.ToDictionary(item => item.StockId, materials.AsWritten, StringComparer.Ordinal);
        var layouts = new List<NestLayoutJson>();
        foreach (var (problem, nest) in nests)
        {
            var mapping = new NestLayoutMapping(_scale, request.IsCosted, problem);
            foreach (var layout in nest.Layouts)
            {
                var number = ofStock[layout.Stock.StockId] = ofStock.GetValueOrDefault(layout.Stock.StockId) + 1;
                layouts.Add(mapping.ToJson($"{layout.Stock.StockId}.{number}", layouts.Count + 1, written[layout.Stock.StockId], layout));
            }
        }
        return [.. layouts.OrderBy(layout => layout.LayoutId, StringComparer.Ordinal)];
    }

    public List<ClaimJson> Claims()
    {
        var used = Layouts.GroupBy(layout => layout.Stock.StockId, StringComparer.Ordinal)
            .ToDictionary(ofItem => ofItem.Key, ofItem => ofItem.Sum(layout => layout.Repeat), StringComparer.Ordinal);
        return
        [
            .. request.Stock.Where(item => used.ContainsKey(item.StockId))
                .OrderBy(item => item.StockId, StringComparer.Ordinal)
                .Select(item => new ClaimJson
                {
                    StockId = item.StockId,
                    Quantity = used[item.StockId],
                    NominalLength = item.NominalLength,
                    Version = item.Version,
                    Attributes = item.Attributes,
                }),
        ];
    }

    public NestTotalsJson Totals()
    {
        var ofStock = request.Stock.ToDictionary(item => item.StockId, materials.Of, StringComparer.Ordinal);
        return new NestTotals(request, materials, request.Pieces.Select(materials.Of), [.. Layouts.Select(layout => (ofStock[layout.Stock.StockId], layout))]).Write();
    }
}
