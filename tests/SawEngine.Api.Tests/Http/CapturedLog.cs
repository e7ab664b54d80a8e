using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace SawEngine.Api.Tests.Http;

/// <summary>What the service logged.</summary>
public sealed class CapturedLog : ILoggerProvider
{
    private readonly ConcurrentQueue<Entry> _entries = new();

    public IReadOnlyList<Entry> Entries => [.. _entries];

    /// <summary>The first line about a request; it is written just after the caller has its answer.</summary>
    public async Task<Entry> RequestLine(Func<Entry, bool> isWanted)
    {
        while (true)
        {
            if (_entries.FirstOrDefault(entry => entry.Category == "SawEngine.Requests" && isWanted(entry)) is { } found)
                return found;
            await Task.Delay(10);
        }
    }

    public ILogger CreateLogger(string categoryName) => new Logger(categoryName, _entries);

    public void Dispose()
    {
    }

    public sealed record Entry(string Category, LogLevel Level, string Message, IReadOnlyDictionary<string, object?> Members, Exception? Exception);

    private sealed class Logger(string category, ConcurrentQueue<Entry> entries) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            var members = new Dictionary<string, object?>(state as IEnumerable<KeyValuePair<string, object?>> ?? [], StringComparer.Ordinal);
            entries.Enqueue(new(category, logLevel, formatter(state, exception), members, exception));
        }
    }
}
