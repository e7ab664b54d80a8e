using SawEngine.Core.Quantities;

namespace SawEngine.Core.Orders;

/// <summary>By how much a piece may be longer or shorter than ordered; none is the default value.</summary>
/// <param name="Plus">How much longer, zero or more.</param>
/// <param name="Minus">How much shorter, zero or more.</param>
public readonly record struct Tolerance(Length Plus, Length Minus)
{
    /// <summary>How much longer than ordered is aimed at: <c>(Plus - Minus) / 2</c>, half a nanometer rounded up, since a long piece can be cut again.</summary>
    public Length Middle => Length.FromNanometers(((Plus - Minus).Nanometers + 1) >> 1);
}
