using Microsoft.AspNetCore.Connections;
using SawEngine.Api;
using SawEngine.Api.CommandLine;

using var loggers = LoggerFactory.Create(logging => logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace));
var commands = Commands.All(SawEngineApi.Operations(SawEngineApi.Nester(loggers)));
if (!Commands.StartsServer(args))
{
#pragma warning disable RS0030 // The one place that hands the standard streams over.
    var io = new CommandIo(Console.OpenStandardInput(), Console.OpenStandardOutput(), Console.Error);
#pragma warning restore RS0030
    return await Commands.Run(args, commands, io, CancellationToken.None);
}

var builder = WebApplication.CreateBuilder(args);
SawEngineApi.Configure(builder);
await using var app = builder.Build();
try
{
    SawEngineApi.Map(app);
}
catch (InvalidConfigurationException wrong)
{
#pragma warning disable RS0030
    await Console.Error.WriteLineAsync(wrong.Message);
#pragma warning restore RS0030
    return Commands.BadInput;
}
try
{
    await app.StartAsync();
}
catch (IOException taken) when (taken.InnerException is AddressInUseException)
{
#pragma warning disable RS0030
    await Console.Error.WriteLineAsync(taken.Message);
#pragma warning restore RS0030
    return Commands.Nothing;
}
await app.WaitForShutdownAsync();
return Commands.Done;
