using SawEngine.Core.Accuracy;
using SawEngine.Core.Cautions;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Times;

namespace SawEngine.Core.CuttingData;

/// <summary>How a saw makes a cut.</summary>
/// <param name="Wanted">The cut.</param>
/// <param name="Saw">The saw.</param>
/// <param name="Choice">Its blade, how the section lies, and the cutting data.</param>
/// <param name="Cautions">What could hurt someone, in the order in which it is said.</param>
public sealed record CutOnSaw(WantedCut Wanted, Saw Saw, BladeChoice Choice, IReadOnlyList<Caution> Cautions)
{
    /// <summary>The cutting data.</summary>
    public CutData Data => Choice.Cuts[0];

    /// <summary>How far the bar moves on for a piece, the length that is aimed at and the kerf along the bar; null where no length is stated.</summary>
    public Length? Index => Wanted.AimedLength + Wanted.Face.KerfAlongBar(Choice.Blade.Kerf);

    /// <summary>One cycle of equal pieces, so without a change of angle; null where no length is stated.</summary>
    public TimeParts? Cycle
    {
        get
        {
            var face = Choice.Lay.Of(Wanted.Face);
            return Index is { } index ? CutCycle.Of(Saw, new(index, Data.CutSeconds, face, Wanted.Bundle.Bars), face) : null;
        }
    }

    /// <summary>How exactly the saw cuts the length; null where none is stated.</summary>
    public LengthAccuracy? LengthAccuracy =>
        Wanted.AimedLength is { } length ? LengthAccuracy.Of(Saw.Accuracy, length, CutCycle.Strokes(Index!.Value, Saw.BarFeedStroke), Wanted.Tolerance) : null;

    /// <summary>Whether the ordered squareness is held; null where none is ordered.</summary>
    public bool? HoldsSquareness => Wanted.Squareness is { } ordered ? Data.OutOfSquare <= ordered : null;
}
