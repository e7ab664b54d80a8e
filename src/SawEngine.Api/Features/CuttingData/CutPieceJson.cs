using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>The pieces that a cut frees: `length` or `lengthText`, one of the two.</summary>
public sealed record CutPieceJson : IStatedLength
{
    /// <summary>Ordered length in the length unit of the request, measured where lengthAt says; exactly one of length and lengthText is stated.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? Length { get; init; }

    /// <summary>The same in feet and inches, whatever the length unit of the request is, such as 12'-6 3/8", 12', 150 3/8" or 6.375"; ft and in may stand for the marks.</summary>
    [MaxLength(Limits.LengthTextLength)]
    public string? LengthText { get; init; }

    /// <summary>Tolerance of the length; whether it is held is said only where it is given.</summary>
    public ToleranceJson? Tolerance { get; init; }
}
