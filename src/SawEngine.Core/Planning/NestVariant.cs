namespace SawEngine.Core.Planning;

/// <summary>A way to nest a group other than for the least material, so that promises can be kept.</summary>
/// <param name="Apart">Orders whose lines are nested first and share no bar with the others; null where all lines are nested together.</param>
/// <param name="Widest">Whether the nest suits all saws that can cut the group, whatever that costs in material.</param>
internal sealed record NestVariant(IReadOnlySet<string>? Apart = null, bool Widest = false);
