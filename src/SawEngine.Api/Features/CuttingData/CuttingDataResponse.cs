using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.ReferenceData;
using SawEngine.Api.Wire;
using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>How saws make the cuts, and why others do not. Lists are sorted by id.</summary>
public sealed record CuttingDataResponse : OperationResponse
{
    /// <summary>Whether at least one saw can make every cut, some, or none.</summary>
    [KnownValues(typeof(PlanStatus))]
    public required string Status { get; init; }

    /// <summary>Cuts and the saws that can make them, by cut and rank.</summary>
    public required IReadOnlyList<CutResultJson> Results { get; init; }

    /// <summary>Cuts and the saws that cannot make them, by cut and saw.</summary>
    public required IReadOnlyList<CutNotPossibleJson> NotPossible { get; init; }

    /// <summary>Grades of the results with the values that the data start from, by designation.</summary>
    public required IReadOnlyList<GradeItemJson> Grades { get; init; }

    /// <summary>Cautions, by id.</summary>
    public required IReadOnlyList<CautionJson> Cautions { get; init; }

    /// <summary>What the engine filled in, by saw and name.</summary>
    public required IReadOnlyList<DefaultJson> Defaults { get; init; }
}
