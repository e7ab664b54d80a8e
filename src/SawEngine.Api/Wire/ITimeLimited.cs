namespace SawEngine.Api.Wire;

/// <summary>A request whose calculation may be stopped by the clock.</summary>
public interface ITimeLimited
{
    /// <summary>Seconds after which the best answer so far is taken; null for no limit but the service's own.</summary>
    decimal? TimeLimitSeconds { get; }
}
