namespace SawEngine.Api.Wire;

/// <summary>Limits of an estimate beside those of every operation (<see cref="Limits"/>).</summary>
public static class EstimateLimits
{
    /// <summary>Most order lines.</summary>
    public const int Lines = 500;

    /// <summary>Most quantities for which a price is asked.</summary>
    public const int PriceBreaks = 10;

    /// <summary>Most prices, lines times quantities.</summary>
    public const int Prices = 1_000;
}
