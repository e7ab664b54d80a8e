using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Planning;

/// <summary>A bar layout with its place in the plan.</summary>
public sealed record PlannedLayout
{
    /// <summary>Its id: the stock id and a number; it stays when the job moves.</summary>
    public required string LayoutId { get; init; }

    /// <summary>The job that cuts it.</summary>
    public required string JobId { get; init; }

    /// <summary>Its place in the job, from 1.</summary>
    public required int Sequence { get; init; }

    /// <summary>The layout, with positions for the saw that cuts it.</summary>
    public required BarLayout Layout { get; init; }

    /// <summary>The saws for which the verifier passes it.</summary>
    public required IReadOnlyList<string> SawIds { get; init; }

    /// <summary>Id for the label of the remnant; null where the remainder is scrap.</summary>
    public string? RemnantId => Layout.Remainder.Kind == RemainderKind.Remnant ? LayoutId + "R" : null;

    /// <summary>Mass of one bar; null where section or grade is unnamed.</summary>
    public Mass? BarMass => MassOf(Layout.Stock.Length);

    /// <summary>Mass of the remainder of one bar.</summary>
    public Mass? RemainderMass => MassOf(Layout.Remainder.Length);

    private Mass? MassOf(Length length) =>
        Layout.Stock is { Section: { } section, Grade: { } grade } ? grade.Density.Value.MassOf(section.Area, length) : null;
}
