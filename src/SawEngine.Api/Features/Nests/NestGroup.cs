using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>Pieces and stock of one section and grade.</summary>
/// <param name="Section">The section; null where none is stated.</param>
/// <param name="Grade">The grade; null where none is stated.</param>
/// <param name="Problem">What is to be nested.</param>
internal sealed record NestGroup(string? Section, string? Grade, NestProblem Problem);
