namespace SawEngine.Core.CuttingData;

/// <summary>What holds the blade feed back over most of the cut.</summary>
public enum CutLimit
{
    /// <summary>The cutting rate of the grade.</summary>
    GradeRate,

    /// <summary>The saw's fastest blade speed, which is below the grade's.</summary>
    SawSpeedRange,

    /// <summary>The motor's power.</summary>
    Power,

    /// <summary>The heaviest load per tooth, by chip thickness, by few teeth in a thin run or by the room in the gullet.</summary>
    ToothLoad,

    /// <summary>The lightest load per tooth of a work-hardening grade, which lifts the feed above the grade's rate.</summary>
    ToothLoadMinimum,

    /// <summary>The saw's fastest blade feed.</summary>
    BladeFeed,

    /// <summary>The ordered squareness, which a fuller feed would spoil.</summary>
    Squareness,
}
