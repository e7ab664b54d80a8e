using System.ComponentModel.DataAnnotations;
using SawEngine.Core.CuttingData;

namespace SawEngine.Api.Features.Plans;

/// <summary>Teeth of the blade in the work.</summary>
public sealed record TeethInWorkJson
{
    /// <summary>In the shortest run of material.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Min { get; init; }

    /// <summary>In the mean width, area over travel.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Mean { get; init; }

    /// <summary>In the longest run of material.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Max { get; init; }

    /// <summary>The teeth to 0.1, half to even.</summary>
    public static TeethInWorkJson Of(TeethInWork teeth) => new()
    {
        Min = decimal.Round(teeth.Min, 1, MidpointRounding.ToEven),
        Mean = decimal.Round(teeth.Mean, 1, MidpointRounding.ToEven),
        Max = decimal.Round(teeth.Max, 1, MidpointRounding.ToEven),
    };
}
