namespace SawEngine.Core.CuttingData;

/// <summary>The blade for a section, grade and saw, or why there is none: exactly one of the two.</summary>
public sealed record BladeChoiceResult
{
    private BladeChoiceResult(BladeChoice? choice, CutObstacle? obstacle)
    {
        Choice = choice;
        Obstacle = obstacle;
    }

    /// <summary>The choice.</summary>
    public BladeChoice? Choice { get; }

    /// <summary>Why there is none.</summary>
    public CutObstacle? Obstacle { get; }

    internal static BladeChoiceResult Of(BladeChoice choice) => new(choice, null);

    internal static BladeChoiceResult None(string code, string detail) => new(null, new(code, detail));
}
