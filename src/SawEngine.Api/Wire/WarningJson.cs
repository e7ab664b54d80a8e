namespace SawEngine.Api.Wire;

/// <summary>Something that the caller should know, but need not change.</summary>
public sealed record WarningJson
{
    /// <summary>What it is, for a program.</summary>
    public required string Code { get; init; }

    /// <summary>Where it is in the body sent, as a JSON Pointer fragment.</summary>
    public string? Pointer { get; init; }

    /// <summary>The piece that it is about.</summary>
    public string? PieceId { get; init; }

    /// <summary>The cut that it is about.</summary>
    public string? CutId { get; init; }

    /// <summary>The order that it is about.</summary>
    public string? OrderId { get; init; }

    /// <summary>The order line that it is about.</summary>
    public string? LineId { get; init; }

    /// <summary>The stock item that it is about.</summary>
    public string? StockId { get; init; }

    /// <summary>The saw that it is about.</summary>
    public string? SawId { get; init; }

    /// <summary>The cutting job that it is about.</summary>
    public string? JobId { get; init; }

    /// <summary>What it is, for a person.</summary>
    public required string Detail { get; init; }
}
