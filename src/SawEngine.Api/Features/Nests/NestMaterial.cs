namespace SawEngine.Api.Features.Nests;

/// <summary>
/// Section and grade, each null where none is stated: by the designation of the catalog, or as written where the catalog knows none. Pieces are cut only from stock of the same, or of a substitute.
/// </summary>
/// <param name="Section">The section.</param>
/// <param name="Grade">The grade.</param>
internal readonly record struct NestMaterial(string? Section, string? Grade);
