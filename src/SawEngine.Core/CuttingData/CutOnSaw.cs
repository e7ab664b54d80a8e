using SawEngine.Core.Cautions;
using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>How a saw makes a cut.</summary>
/// <param name="Saw">The saw.</param>
/// <param name="Choice">Its blade, how the section lies, and the cutting data.</param>
/// <param name="Cautions">What could hurt someone, in the order in which it is said.</param>
public sealed record CutOnSaw(Saw Saw, BladeChoice Choice, IReadOnlyList<Caution> Cautions)
{
    /// <summary>The cutting data.</summary>
    public CutData Data => Choice.Cuts[0];
}
