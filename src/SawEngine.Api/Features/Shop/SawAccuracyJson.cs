using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>How exactly a saw sets lengths and how square it cuts. What is not stated is the engine's default and is echoed in the answer.</summary>
public sealed record SawAccuracyJson
{
    private const double LargestError = 1000;

    /// <summary>Largest random error of one stroke of the bar feed, taken as three standard deviations, in the length unit of the request.</summary>
    [LengthRange(LargestError)]
    public decimal? IndexErrorPerStroke { get; init; }

    /// <summary>Systematic error of one stroke in the length unit of the request, positive where pieces come out long.</summary>
    [LengthRange(-LargestError, LargestError)]
    public decimal IndexBiasPerStroke { get; init; }

    /// <summary>Systematic error of the measuring scale in millionths of the length, positive where pieces come out long.</summary>
    [Range(-100000, 100000)]
    public decimal ScaleErrorPpm { get; init; }

    /// <summary>Largest error of the kerf, which counts once for each piece, taken as three standard deviations, in the length unit of the request.</summary>
    [LengthRange(LargestError)]
    public decimal? KerfError { get; init; }

    /// <summary>How far a face is out of square as a share of the blade's way, with a good blade at full blade feed: 0.003 is 0.3 mm in 100 mm.</summary>
    [Range(0, 1)]
    public decimal? Squareness { get; init; }
}
