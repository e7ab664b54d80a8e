namespace SawEngine.Api;

/// <summary>The service must not start: its configuration is wrong. The message says what to change.</summary>
public sealed class InvalidConfigurationException(string message) : Exception(message);
