namespace SawEngine.Core.Sections;

/// <summary>Kind of cross-section of a bar.</summary>
public enum SectionShape
{
    /// <summary>Solid round.</summary>
    Round,

    /// <summary>Solid square.</summary>
    Square,

    /// <summary>Solid hexagon, by its width across flats.</summary>
    Hexagon,

    /// <summary>Solid flat.</summary>
    Flat,

    /// <summary>Round tube.</summary>
    RoundTube,

    /// <summary>Square tube.</summary>
    SquareTube,

    /// <summary>Rectangle tube.</summary>
    RectangleTube,

    /// <summary>Pipe: a round tube by nominal size and schedule.</summary>
    Pipe,

    /// <summary>Angle with equal or unequal legs.</summary>
    Angle,

    /// <summary>Channel with parallel or tapered flanges.</summary>
    Channel,

    /// <summary>I-beam or H-column.</summary>
    IBeam,

    /// <summary>Tee.</summary>
    Tee,

    /// <summary>Any other, by its outline, or by its area and contact widths.</summary>
    Custom,
}
