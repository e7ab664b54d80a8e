using SawEngine.Core.Planning;

namespace SawEngine.Api.Wire;

/// <summary>How much of what was asked an answer does, as its status says.</summary>
internal static class Completion
{
    /// <summary>Nothing of it.</summary>
    public static readonly string None = WireEnum.Text(PlanStatus.None);

    /// <summary>All, some or none of a number.</summary>
    public static string Text(int done, int asked) =>
        done == asked ? WireEnum.Text(PlanStatus.Complete) : done > 0 ? WireEnum.Text(PlanStatus.Partial) : None;
}
