using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Cautions;

namespace SawEngine.Api.Features.Plans;

/// <summary>What could hurt someone.</summary>
public sealed record CautionJson
{
    /// <summary>Id of the caution.</summary>
    public required string CautionId { get; init; }

    /// <summary>What it is, for a program.</summary>
    public required string Code { get; init; }

    /// <summary>A sentence for the operator.</summary>
    public required string Detail { get; init; }

    /// <summary>Standard or regulation that covers it.</summary>
    public required string Reference { get; init; }

    /// <summary>How far the reference can be trusted.</summary>
    [KnownValues(typeof(Confidence))]
    public required string Confidence { get; init; }

    /// <summary>A caution under its id.</summary>
    public static CautionJson Of(NumberedCaution numbered) => new()
    {
        CautionId = numbered.CautionId,
        Code = numbered.Caution.Code,
        Detail = numbered.Caution.Detail,
        Reference = numbered.Caution.Reference,
        Confidence = WireEnum.Text(numbered.Caution.Confidence),
    };
}
