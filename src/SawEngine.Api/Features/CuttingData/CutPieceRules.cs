using FluentValidation;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Stock;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>Rules of a piece that bounds on its members cannot state.</summary>
internal sealed class CutPieceRules : AbstractValidator<CutPieceJson>
{
    public CutPieceRules() => RuleFor(piece => piece).Custom((piece, context) =>
    {
        if (piece.Tolerance is { } tolerance)
            context.CheckTolerance(tolerance, piece, context.Materials().Scale);
    });
}
