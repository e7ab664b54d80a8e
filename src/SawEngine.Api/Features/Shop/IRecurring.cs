namespace SawEngine.Api.Features.Shop;

/// <summary>What comes again by a recurrence rule.</summary>
public interface IRecurring
{
    /// <summary>The day from which the rule counts.</summary>
    DateOnly FirstDay { get; }

    /// <summary>Lines of RFC 5545.</summary>
    IReadOnlyList<string> Recurrence { get; }
}
