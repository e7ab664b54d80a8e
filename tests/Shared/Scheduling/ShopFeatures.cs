namespace SawEngine.Tests.Scheduling;

/// <summary>What a random problem has besides saws with shifts, jobs, set-ups, worn blades and promises.</summary>
[Flags]
internal enum ShopFeatures
{
    None = 0,
    Angles = 1,
    Pairs = 1 << 1,
    Beside = 1 << 2,
    Overtime = 1 << 3,
    Unattended = 1 << 4,
    Shelf = 1 << 5,
    Operators = 1 << 6,
    Walking = (1 << 7) | Operators,
    Cranes = 1 << 8,
    Parts = 1 << 9,
    Frozen = 1 << 10,
    After = 1 << 11,
    Previous = 1 << 12,
    Makespan = 1 << 13,
    SetUpCost = 1 << 14,
    All = (1 << 15) - 1,
}
