namespace SawEngine.Api.Features.Nests;

/// <summary>What the pieces and the stock of a request are of: the section and grade that they state, or the only one that is stated anywhere.</summary>
internal sealed class NestMaterials(NestProblemRequest request)
{
    private readonly NestMaterial _only = new(NestGroups.OnlySection(request), NestGroups.OnlyGrade(request));

    public NestMaterial Of(PieceJson piece) => new(piece.Section ?? _only.Section, piece.Grade ?? _only.Grade);

    public NestMaterial Of(NestStockJson item) => new(item.Section ?? _only.Section, item.Grade ?? _only.Grade);
}
