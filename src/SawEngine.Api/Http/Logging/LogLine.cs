using System.Buffers;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Connections;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Logging.Console;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http.Logging;

/// <summary>Writes a log entry as one line of JSON. Nothing in it controls a terminal or the direction of text, whoever sent it.</summary>
/// <param name="clock">Gives the time of the entry.</param>
internal sealed class LogLine(TimeProvider clock) : ConsoleFormatter(FormatName)
{
    /// <summary>Name under which the settings of the console know the form.</summary>
    public const string FormatName = "line";

    private const int LongestText = 2_000;
    private const int LongestException = 16_000;

    /// <summary>What is taken from the scopes; the rest, such as the raw path, is left out.</summary>
    private static readonly string[] Scoped = ["TraceId", "KeyId"];

    public override void Write<TState>(in LogEntry<TState> logEntry, IExternalScopeProvider? scopeProvider, TextWriter textWriter)
    {
        // The program itself says in one line that its port is taken.
        if (logEntry.Exception is IOException { InnerException: AddressInUseException })
            return;
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("time", clock.GetUtcNow());
            json.WriteString("level", logEntry.LogLevel.ToString());
            json.WriteString("category", logEntry.Category);
            json.WriteString("message", Plain(logEntry.Formatter(logEntry.State, logEntry.Exception), LongestText));
            foreach (var (name, value) in Members(logEntry.State, scopeProvider))
                WriteMember(json, name, value);
            if (logEntry.Exception is { } exception)
                json.WriteString("exception", Plain(exception.ToString(), LongestException));
            json.WriteEndObject();
        }
        textWriter.WriteLine(Encoding.UTF8.GetString(buffer.WrittenSpan));
    }

    private static SortedDictionary<string, object> Members(object? state, IExternalScopeProvider? scopes)
    {
        var members = new SortedDictionary<string, object>(StringComparer.Ordinal);
        scopes?.ForEachScope(static (scope, found) => Add(found, scope, Scoped.Contains), members);
        Add(members, state, static name => name != "{OriginalFormat}");
        return members;
    }

    private static void Add(SortedDictionary<string, object> members, object? state, Func<string, bool> isWanted)
    {
        foreach (var (name, value) in state as IEnumerable<KeyValuePair<string, object?>> ?? [])
        {
            if (value is not null && isWanted(name))
                members[JsonNamingPolicy.CamelCase.ConvertName(name)] = value;
        }
    }

    private static void WriteMember(Utf8JsonWriter json, string name, object value)
    {
        if (value is int or long)
            json.WriteNumber(name, Convert.ToInt64(value, null));
        else
            json.WriteString(name, Plain(value.ToString() ?? "", LongestText));
    }

    private static string Plain(string text, int longest) => Quoted.Plain(text.Length > longest ? text[..longest] + "…" : text);
}
