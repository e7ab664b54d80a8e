namespace SawEngine.Api.CommandLine;

/// <summary>A verb of the command line.</summary>
/// <param name="Verb">The first argument.</param>
/// <param name="Argument">Name of the one argument that follows.</param>
/// <param name="Run">Runs it; gives the exit code.</param>
public sealed record Command(string Verb, string Argument, Func<string, CommandIo, CancellationToken, Task<int>> Run);
