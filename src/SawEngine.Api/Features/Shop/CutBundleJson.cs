using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.Shop;

/// <summary>Equal bars that are clamped and cut together.</summary>
public sealed record CutBundleJson
{
    /// <summary>Bars side by side, along the blade.</summary>
    [Range(1, Limits.BundleWide)]
    public required int Wide { get; init; }

    /// <summary>Bars on top of one another.</summary>
    [Range(1, Limits.BundleHigh)]
    public required int High { get; init; }

    /// <summary>A bundle; null for one bar by itself.</summary>
    public static CutBundleJson? Of(CutBundle bundle) => bundle.IsSingle ? null : new() { Wide = bundle.Wide, High = bundle.High };
}
