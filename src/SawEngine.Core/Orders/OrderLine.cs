using SawEngine.Core.Grades;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Orders;

/// <summary>A number of equal pieces that are wanted.</summary>
public sealed record OrderLine
{
    /// <summary>Order and line.</summary>
    public required PieceRef Ref { get; init; }

    /// <summary>Section of the pieces; null where all pieces and stock are of one unnamed section.</summary>
    public Section? Section { get; init; }

    /// <summary>Grade of the pieces; null where all pieces and stock are of one unnamed grade.</summary>
    public Grade? Grade { get; init; }

    /// <summary>Grades that the order allows in place of its own, by designation, ordinal; none where it wants its own. They say what may be cut, not at what cost.</summary>
    public ValueList<Grade> Substitutes { get; init; } = [];

    /// <summary>Ordered length, measured at <see cref="LengthAt"/>.</summary>
    public required Length Length { get; init; }

    /// <summary>By how much a piece may be longer or shorter, measured where <see cref="Length"/> is.</summary>
    public Tolerance Tolerance { get; init; }

    /// <summary>
    /// The length that is cut: the middle of the tolerance, <c>Length + (Plus - Minus) / 2</c>, half a nanometer rounded up, since a long piece can be cut again
    /// and a short one cannot.
    /// </summary>
    public Length AimedLength => Length + Tolerance.Middle;

    /// <summary>Where the length is measured.</summary>
    public LengthAt LengthAt { get; init; } = LengthAt.Overall;

    /// <summary>Number of pieces, at least 1.</summary>
    public required int Quantity { get; init; }

    /// <summary>How many pieces fewer are accepted where stock is short; less than <see cref="Quantity"/>.</summary>
    public int Under { get; init; }

    /// <summary>How many pieces more are accepted; solvers place none of them, an edited nest may.</summary>
    public int Over { get; init; }

    /// <summary>The priority of a line that states none.</summary>
    public const int UsualPriority = 5;

    /// <summary>Who is served where stock is short, from 1, which is first; then goes the earlier promise.</summary>
    public int Priority { get; init; } = UsualPriority;

    /// <summary>The end that is cut first.</summary>
    public EndCut FirstEnd { get; init; }

    /// <summary>The end that is cut last.</summary>
    public EndCut SecondEnd { get; init; }

    /// <summary>The customer whose stock may serve the line beside the shop's own; null where it is only the shop's own.</summary>
    public string? Owner { get; init; }

    /// <summary>The plant that needs the pieces; null where it does not matter.</summary>
    public string? Plant { get; init; }

    /// <summary>Inspection document ordered; the stock's must be at least as high.</summary>
    public Certificate Certificate { get; init; }

    /// <summary>Which heats may serve the line.</summary>
    public HeatRule HeatRule { get; init; }

    /// <summary>The heat asked for; set where <see cref="HeatRule"/> is <see cref="HeatRule.Named"/>.</summary>
    public string? Heat { get; init; }
}
