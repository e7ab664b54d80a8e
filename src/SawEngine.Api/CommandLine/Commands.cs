using System.Text;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.CommandLine;

/// <summary>The verbs: one for each operation, and those that look after the service.</summary>
public static class Commands
{
    /// <summary>Exit code: done.</summary>
    public const int Done = 0;

    /// <summary>Exit code: answered, but nothing could be planned; or not healthy.</summary>
    public const int Nothing = 1;

    /// <summary>Exit code: bad input or bad arguments.</summary>
    public const int BadInput = 2;

    /// <summary>All verbs.</summary>
    public static IReadOnlyList<Command> All(IReadOnlyList<Operation> operations) =>
    [
        .. operations.Select(operation => new Command(operation.Verb, "FILE", (file, io, cancellation) => RunOperation(operation, file, io, cancellation))),
        new("openapi", "DIRECTORY", OpenApiFiles.Write),
        new("defaults", "DOCUMENT", DefaultsDocument.Write),
        new("health", "URL", HealthProbe.Run),
        new("key", "ID", NewKey.Write),
    ];

    /// <summary>Whether arguments ask for the server: there are none, or they begin with a setting such as <c>--urls</c>.</summary>
    public static bool StartsServer(IReadOnlyList<string> arguments) => arguments.Count == 0 || (arguments[0].StartsWith("--", StringComparison.Ordinal) && !AsksForHelp(arguments));

    /// <summary>Runs what the arguments ask for.</summary>
    public static async Task<int> Run(IReadOnlyList<string> arguments, IReadOnlyList<Command> commands, CommandIo io, CancellationToken cancellation)
    {
        if (Find(arguments, commands) is { } command)
            return await Run(command, arguments, io, cancellation);
        if (AsksForHelp(arguments))
        {
            await io.Output.WriteAsync(Encoding.UTF8.GetBytes(Usage(commands)), cancellation);
            return Done;
        }
        await io.Error.WriteAsync($"{Quoted.Text(arguments[0])} is not known here.\n{Usage(commands)}");
        return BadInput;
    }

    /// <summary>The verb that the arguments begin with; null where they begin with none.</summary>
    public static Command? Find(IReadOnlyList<string> arguments, IReadOnlyList<Command> commands) =>
        arguments.Count == 0 ? null : commands.FirstOrDefault(command => command.Verb == arguments[0]);

    /// <summary>Runs a verb with the arguments behind it.</summary>
    public static async Task<int> Run(Command command, IReadOnlyList<string> arguments, CommandIo io, CancellationToken cancellation)
    {
        if (arguments.Count == 2)
            return await command.Run(arguments[1], io, cancellation);
        await io.Error.WriteLineAsync($"Usage: {command.Verb} {command.Argument}");
        return BadInput;
    }

    private static bool AsksForHelp(IReadOnlyList<string> arguments) => arguments[0] is "--help" or "-h" or "-?" or "help";

    private static string Usage(IReadOnlyList<Command> commands) =>
        "Usage:\n" + string.Concat(commands.Select(command => $"  {command.Verb} {command.Argument}\n"))
        + "Without a verb the service starts; --urls http://HOST:PORT says where it listens. FILE may be - for standard input.\n";

    private static async Task<int> RunOperation(Operation operation, string file, CommandIo io, CancellationToken cancellation)
    {
        if (await ReadInput(file, io, cancellation) is not { } body)
            return BadInput;
        switch (operation.Run(body, Preferences.None, cancellation))
        {
            case Answered answered:
                await io.Output.WriteAsync(answered.Body, cancellation);
                return answered.NothingPlanned ? Nothing : Done;
            case Refused refused:
                await io.Output.WriteAsync(refused.ToProblem().ToUtf8(), cancellation);
                return BadInput;
            default:
                throw new InvalidOperationException("An operation answers or refuses.");
        }
    }

    private static async Task<byte[]?> ReadInput(string file, CommandIo io, CancellationToken cancellation)
    {
        try
        {
            await using var input = file == "-" ? io.Input : File.OpenRead(file);
            using var bytes = new MemoryStream();
            await input.CopyToAsync(bytes, cancellation);
            return bytes.ToArray();
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            await io.Error.WriteLineAsync($"{file} cannot be read: {unreadable.Message}");
            return null;
        }
    }
}
