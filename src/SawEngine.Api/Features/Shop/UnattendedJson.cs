using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>
/// When and how far a saw may run by itself. In each span without attendance it stops at the first of: bars, cuts, hours, its blade's life, a step that needs hands.
/// A grade that burns or harms is never cut so, whatever a request says.
/// </summary>
public sealed record UnattendedJson
{
    /// <summary>The calendar whose shifts say when, less the saw's attended time; its overtime counts for nothing. Whenever the saw is not attended where absent. Never in downtimes and maintenance.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? CalendarId { get; init; }

    /// <summary>Most bars, or cut bundles, that the magazine loads by itself in one span.</summary>
    [Range(0, 1000)]
    public required int Bars { get; init; }

    /// <summary>Most cuts in one span: what outfeed and chip bin hold.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int Cuts { get; init; }

    /// <summary>Hours from the start of a span after which it does not go on by itself; no limit where absent.</summary>
    [Range(0, 10_000, MinimumIsExclusive = true)]
    public decimal? Hours { get; init; }
}
