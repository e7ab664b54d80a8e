using System.ComponentModel.DataAnnotations;
using SawEngine.Core.CuttingData;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>How a new blade is broken in on this cut: at the same blade speed with less blade feed. The maker's word comes first.</summary>
public sealed record BreakInJson
{
    /// <summary>Cuts that it takes.</summary>
    [Range(1, 1_000_000_000)]
    public required long Cuts { get; init; }

    /// <summary>What is left of the mean blade feed: more than half where motor or saw hold it back anyway, or a work-hardening grade keeps its lightest load per tooth.</summary>
    [Range(0, 1)]
    public required decimal FeedFactor { get; init; }

    /// <summary>Time that the blade is in the work meanwhile, for each cut in seconds.</summary>
    [Range(0, int.MaxValue)]
    public required decimal SecondsPerCut { get; init; }

    internal static BreakInJson Of(BreakIn plan) => new() { Cuts = plan.Cuts, FeedFactor = plan.FeedFactor, SecondsPerCut = plan.SecondsPerCut };
}
