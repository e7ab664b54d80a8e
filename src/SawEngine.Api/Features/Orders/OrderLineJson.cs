using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.Orders;

/// <summary>A number of equal pieces that are wanted.</summary>
public sealed record OrderLineJson : IStatedLength
{
    /// <summary>Id of the line, unique in its order.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string LineId { get; init; }

    /// <summary>Id of one of the request's own sections, or a designation of the catalog.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string Section { get; init; }

    /// <summary>Id of one of the request's own grades, or a designation of the catalog.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string Grade { get; init; }

    /// <summary>Grades, named in the same way, that are allowed in place of the line's own. Their stock is used at its own cost where that is less.</summary>
    [MaxLength(Limits.Substitutes)]
    public IReadOnlyList<string> Substitutes { get; init; } = [];

    /// <summary>Ordered length in the length unit of the request, measured where lengthAt says; exactly one of length and lengthText is stated.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? Length { get; init; }

    /// <summary>The same in feet and inches, whatever the length unit of the request is, such as 12'-6 3/8", 12', 150 3/8" or 6.375"; ft and in may stand for the marks.</summary>
    [MaxLength(Limits.LengthTextLength)]
    public string? LengthText { get; init; }

    /// <summary>Number of pieces.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int Quantity { get; init; }

    /// <summary>By how much a piece may be longer or shorter, measured where lengthAt says; it is cut to the middle. Exactly its length where absent.</summary>
    public ToleranceJson Tolerance { get; init; } = new();

    /// <summary>How many pieces fewer are accepted where stock is short; less than quantity.</summary>
    [Range(0, Limits.TotalQuantity)]
    public int Under { get; init; }

    /// <summary>How many pieces more are accepted. This version cuts none of them.</summary>
    [Range(0, Limits.TotalQuantity)]
    public int Over { get; init; }

    /// <summary>Where the length of a mitered piece is measured.</summary>
    public LengthAt LengthAt { get; init; } = LengthAt.Overall;

    /// <summary>The end that is cut first.</summary>
    public EndCutJson FirstEnd { get; init; } = new();

    /// <summary>The end that is cut last.</summary>
    public EndCutJson SecondEnd { get; init; } = new();

    /// <summary>The customer whose stock may serve it beside the shop's own; the shop's own only where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Owner { get; init; }

    /// <summary>The plant that needs it: stock of other plants serves it only where that has a foreignPlantCost. Any plant will do where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Plant { get; init; }

    /// <summary>Inspection document ordered; the stock's must be at least as high. None is needed where absent.</summary>
    public CertificateJson? Certificate { get; init; }

    /// <summary>Which heats may serve the line.</summary>
    public HeatRule HeatRule { get; init; } = HeatRule.Any;

    /// <summary>The heat asked for; given if and only if heatRule is named.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Heat { get; init; }

    /// <summary>Free marks of the caller, which come back unchanged.</summary>
    [MaxLength(Limits.Attributes)]
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
