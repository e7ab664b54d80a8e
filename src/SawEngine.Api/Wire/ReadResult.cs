namespace SawEngine.Api.Wire;

/// <summary>A request, or why it could not be read.</summary>
internal sealed record ReadResult<T>
{
    public ReadResult(FaultList faults) => Faults = faults;

    public ReadResult(T request, FaultList ignored) => (Request, Ignored) = (request, ignored);

    public T? Request { get; }

    public FaultList Ignored { get; } = new();

    public FaultList Faults { get; } = new();
}
