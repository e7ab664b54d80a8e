namespace SawEngine.Solvers.Nesting;

/// <summary>Steps left to a search; they are counted by the searches themselves, so that the same request always stops at the same place.</summary>
internal sealed class StepBudget(long steps, CancellationToken cancellation)
{
    /// <summary>Steps taken so far.</summary>
    public long Spent { get; private set; }

    /// <summary>Steps that may still be taken.</summary>
    public long Left => Math.Max(0, steps - Spent);

    /// <summary>Nothing may be searched any more: the steps are used up or the caller has canceled.</summary>
    public bool Exhausted => Spent >= steps || cancellation.IsCancellationRequested;

    /// <summary>Takes steps; false where none are left.</summary>
    public bool Spend(long taken)
    {
        Spent += taken;
        return !Exhausted;
    }

    /// <summary>A budget of its own with some of the steps left here; what is spent of it is to be spent here as well.</summary>
    public StepBudget Part(long most) => new(Math.Min(most, Left), cancellation);
}
