using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>Pieces and stock of one section and grade.</summary>
/// <param name="Material">The section and grade.</param>
/// <param name="Problem">What is to be nested.</param>
internal sealed record NestGroup(NestMaterial Material, NestProblem Problem);
