namespace SawEngine.Solvers.Scheduling;

/// <summary>What a saw is, or is to be, set up for, by number and in the order in which it is done.</summary>
internal readonly record struct SetUpNumbers(int First, int Second, int Third, int Fourth)
{
    public int this[int kind] => kind switch { 0 => First, 1 => Second, 2 => Third, _ => Fourth };

    /// <summary>What the saw is set up for once it was changed: what does not matter stays as it was.</summary>
    public SetUpNumbers After(SetUpNumbers before) => new(
        First == 0 ? before.First : First, Second == 0 ? before.Second : Second, Third == 0 ? before.Third : Third, Fourth == 0 ? before.Fourth : Fourth);
}
