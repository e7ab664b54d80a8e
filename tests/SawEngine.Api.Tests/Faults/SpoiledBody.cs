namespace SawEngine.Api.Tests.Faults;

/// <summary>A body with one fault.</summary>
/// <param name="What">What is wrong, in words.</param>
/// <param name="Body">The body.</param>
/// <param name="Status">Status of the refusal.</param>
/// <param name="Pointer">Where the fault is.</param>
/// <param name="Code">Its code.</param>
internal sealed record SpoiledBody(string What, string Body, int Status, string Pointer, string Code);
