using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.Nests;

/// <summary>Writes bar layouts in the request's unit.</summary>
/// <param name="scale">The unit.</param>
/// <param name="isMoney">Whether values are money; else they are lengths.</param>
/// <param name="problem">What the layouts are for.</param>
internal sealed class NestLayoutMapping(LengthScale scale, bool isMoney, NestProblem problem)
{
    private readonly Dictionary<PieceRef, OrderLine> _lines = problem.Lines.ToDictionary(line => line.Ref);

    public NestLayoutJson ToJson(string id, int sequence, NestMaterial material, BarLayout layout) => new()
    {
        LayoutId = id,
        Sequence = sequence,
        StockId = layout.Stock.StockId,
        Section = material.Section,
        Grade = material.Grade,
        Repeat = layout.Repeat,
        Heat = layout.Stock.Heat,
        Owner = layout.Stock.Owner,
        Plant = layout.Stock.Plant,
        TrimLength = scale.Write(layout.Trim),
        KerfLength = scale.Write(layout.KerfTotal),
        CutCount = CutCount.Of(layout, problem.Rules.Kerf),
        Cuts = [.. layout.Cuts.Select(Cut)],
        Remainder = new()
        {
            Length = scale.Write(layout.Remainder.Length),
            Kind = WireEnum.Text(layout.Remainder.Kind),
            Value = scale.WriteMicros(layout.Remainder.ValueMicros, isMoney),
        },
    };

    private NestCutJson Cut(Cut cut) => new()
    {
        PieceId = cut.Piece.LineId,
        Start = scale.Write(cut.Start),
        End = scale.Write(cut.End),
        AimedLength = _lines[cut.Piece].WriteAimedLength(scale),
        StartCut = cut.StartCut.ToJson(),
        EndCut = cut.EndCut.ToJson(),
        Turn = PieceTurnText.Of(cut.Turn),
        CenterlineLength = cut.StartCut.IsSquare && cut.EndCut.IsSquare ? null : scale.Write(cut.Centerline),
    };
}
