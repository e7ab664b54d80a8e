using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>A layout at the positions of one saw, where the verifier passes it.</summary>
/// <param name="Setting">How the saw cuts it.</param>
/// <param name="Problem">The rules that it was verified under.</param>
/// <param name="Layout">The layout, cut bar by bar.</param>
internal sealed record LaidBar(SawSetting Setting, NestProblem Problem, BarLayout Layout)
{
    /// <summary>So many of its bars as the saw cuts them, together where that is quicker.</summary>
    public BarWork Work(int repeat) => Setting.WorkOf(Problem, Layout with { Repeat = repeat });
}
