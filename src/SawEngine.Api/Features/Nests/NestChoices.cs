using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Nesting.Alternatives;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Nests;

/// <summary>What a request asks for beside the cheapest nest of each group.</summary>
internal sealed class NestChoices(NestRequest request, NestMaterials materials, INester nester, CancellationToken cancellation)
{
    private readonly LengthScale _scale = new(request.LengthUnit);

    /// <summary>The alternatives asked for that were found, by kind; null where none was asked for.</summary>
    public IReadOnlyList<NestAlternativeJson>? Alternatives(IReadOnlyList<(NestProblem Problem, Nest Nest)> cheapest) =>
        request.Alternatives.Count == 0 ? null : [.. request.Alternatives.Distinct().Order().Select(kind => Alternative(kind, cheapest)).OfType<NestAlternativeJson>()];

    private NestAlternativeJson? Alternative(NestKind kind, IReadOnlyList<(NestProblem Problem, Nest Nest)> cheapest)
    {
        var alternatives = new NestAlternatives(nester);
        var nests = cheapest.Select(one => (one.Problem, Nest: alternatives.Of(one.Problem, one.Nest, kind, request.Effort, cancellation) ?? one.Nest)).ToList();
        if (nests.Zip(cheapest).All(pair => ReferenceEquals(pair.First.Nest, pair.Second.Nest)))
            return null;
        var answer = new NestAnswer(request, materials, nests);
        return new() { Kind = WireEnum.Text(kind), Objective = answer.Objective(), Layouts = answer.LayoutsById(), Claims = answer.Claims(), Totals = answer.Totals() };
    }

    /// <summary>Small changes that save a bar, those of most use first; null where none was asked for.</summary>
    public IReadOnlyList<NearMissJson>? NearMisses(IReadOnlyList<(NestProblem Problem, Nest Nest)> cheapest)
    {
        if (request.NearMisses is not { } limits)
            return null;
        var search = new NearMissSearch(nester);
        return [.. cheapest.SelectMany(one => search.Of(one.Problem, one.Nest, limits.ToLimits(_scale), cancellation)).Select(ToJson)
            .OrderByDescending(miss => miss.MorePlaced).ThenByDescending(miss => miss.ValueSaved)];
    }

    private NearMissJson ToJson(NearMiss miss) => new()
    {
        Change = WireEnum.Text(miss.Change),
        PieceId = miss.Piece?.LineId,
        StockId = miss.StockId,
        ShorterBy = miss.ShorterBy == Length.Zero ? null : _scale.Write(miss.ShorterBy),
        FewerBy = miss.FewerBy == 0 ? null : miss.FewerBy,
        BarsSaved = miss.BarsSaved,
        ValueSaved = _scale.WriteMicros(miss.CostSavedMicros, request.IsCosted),
        MorePlaced = miss.MorePlaced,
    };
}
