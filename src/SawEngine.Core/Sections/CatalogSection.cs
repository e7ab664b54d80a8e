namespace SawEngine.Core.Sections;

/// <summary>A section of the catalog.</summary>
/// <param name="Section">The section, with its source and confidence.</param>
/// <param name="Dimensions">The dimensions that it was made from.</param>
/// <param name="Standard">The standard that fixes its dimensions, where one does.</param>
/// <param name="Aliases">Other designations for it.</param>
/// <param name="Published">What the source prints for it; absent where only the designation gives the dimensions.</param>
/// <param name="Note">What one should know about its values.</param>
public sealed record CatalogSection(
    Section Section, SectionDimensions Dimensions, string? Standard, IReadOnlyList<string> Aliases, PublishedValues? Published, string? Note);
