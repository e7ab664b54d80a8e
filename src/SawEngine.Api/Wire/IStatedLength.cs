namespace SawEngine.Api.Wire;

/// <summary>What has a length that the caller states, as a number or as text: exactly one of the two.</summary>
public interface IStatedLength
{
    /// <summary>The length in the length unit of the request.</summary>
    decimal? Length { get; }

    /// <summary>The length in feet and inches, whatever the length unit of the request is; see <see cref="Wire.LengthText"/>.</summary>
    string? LengthText { get; }
}
