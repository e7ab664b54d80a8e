namespace SawEngine.Api.Wire;

/// <summary>Faults in the order found: the first hundred are kept, all are counted.</summary>
public sealed class FaultList
{
    private readonly List<Fault> _kept = [];

    /// <summary>The first faults, at most <see cref="Limits.FaultsReported"/>.</summary>
    public IReadOnlyList<Fault> Kept => _kept;

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>Whether further faults are counted only.</summary>
    public bool IsFull => _kept.Count >= Limits.FaultsReported;

    public void Add(string pointer, string code, string detail) => Add(new() { Pointer = pointer, Code = code, Detail = detail });

    /// <summary>A fault of a parameter of path or query.</summary>
    public void AddParameter(string parameter, string code, string detail) => Add(new() { Parameter = parameter, Code = code, Detail = detail });

    /// <summary>Faults with one entry.</summary>
    public static FaultList Of(string pointer, string code, string detail)
    {
        var faults = new FaultList();
        faults.Add(pointer, code, detail);
        return faults;
    }

    private void Add(Fault fault)
    {
        Count++;
        if (!IsFull)
            _kept.Add(fault);
    }
}
