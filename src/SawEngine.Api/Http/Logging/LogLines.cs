using Microsoft.Extensions.Logging.Console;
using SawEngine.Api.Http.Security;

namespace SawEngine.Api.Http.Logging;

/// <summary>The log of the service: lines of JSON on standard output, as containers expect it.</summary>
internal static class LogLines
{
    private const string FormatterSetting = "Logging:Console:FormatterName";

    public static void AddLogLines(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole().AddConsoleFormatter<LogLine, ConsoleFormatterOptions>();
        builder.Services.Configure<ConsoleLoggerOptions>(console => console.FormatterName = builder.Configuration[FormatterSetting] ?? LogLine.FormatName);
        // The framework's own lines about requests carry their queries.
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        // A refused key shows as 401 in the line of its request.
        builder.Logging.AddFilter(typeof(ApiKeyHandler).FullName, LogLevel.Warning);
    }
}
