using SawEngine.Core.Quantities;

namespace SawEngine.Core.Accuracy;

/// <summary>How exactly a saw sets lengths and how square it cuts.</summary>
public sealed record SawAccuracy
{
    /// <summary>Largest random error of one stroke of the bar feed, taken as three standard deviations.</summary>
    public required Length IndexErrorPerStroke { get; init; }

    /// <summary>Systematic error of one stroke, positive where pieces come out long.</summary>
    public Length IndexBiasPerStroke { get; init; }

    /// <summary>Systematic error of the measuring scale in millionths of the length, positive where pieces come out long.</summary>
    public decimal ScaleErrorPpm { get; init; }

    /// <summary>Largest error of the kerf, which counts once for each piece, taken as three standard deviations.</summary>
    public required Length KerfError { get; init; }

    /// <summary>How far a face is out of square for each millimeter of the blade's way, with a good blade at full blade feed.</summary>
    public required decimal Squareness { get; init; }
}
