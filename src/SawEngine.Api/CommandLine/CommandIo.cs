namespace SawEngine.Api.CommandLine;

/// <summary>Standard streams of a command.</summary>
/// <param name="Input">Standard input.</param>
/// <param name="Output">Standard output: the JSON of the answer and nothing else.</param>
/// <param name="Error">Standard error: words for people.</param>
public sealed record CommandIo(Stream Input, Stream Output, TextWriter Error);
