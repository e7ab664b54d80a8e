namespace SawEngine.Core.CuttingData;

/// <summary>Cutting data, or why there are none: exactly one of the two.</summary>
public sealed record CuttingDataResult
{
    private CuttingDataResult(CutData? data, CutObstacle? obstacle)
    {
        Data = data;
        Obstacle = obstacle;
    }

    /// <summary>The data of a cut that can be done.</summary>
    public CutData? Data { get; }

    /// <summary>Why the cut cannot be done.</summary>
    public CutObstacle? Obstacle { get; }

    internal static CuttingDataResult Feasible(CutData data) => new(data, null);

    internal static CuttingDataResult Infeasible(string code, string detail) => new(null, new(code, detail));
}
