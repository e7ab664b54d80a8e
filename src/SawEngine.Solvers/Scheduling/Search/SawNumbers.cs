using System.Runtime.CompilerServices;

namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>What the search knows of one saw: its jobs, its set-ups and its axis.</summary>
internal sealed class SawNumbers
{
    private readonly AttendedAxis? axis; // null where time on it is time

    public SawNumbers(AxisShop shop, int saw)
    {
        Width = shop.Jobs + 1;
        Jobs = [.. Enumerable.Range(0, Width).Select(job => new JobNumbers(
            shop.Seconds[saw][job], shop.Release[saw][job], shop.Due[saw][job], shop.Weight[saw][job], shop.WorkCost[saw][job], shop.SetUpRate[saw][job]))];
        SetUp = shop.SetUp[saw];
        SetUpInto = new int[Width * Width];
        for (var before = 0; before < Width; before++)
            for (var job = 0; job < Width; job++)
                SetUpInto[(job * Width) + before] = SetUp[(before * Width) + job];
        PaysSetUps = Array.Exists(Jobs, job => job.SetUpRate > 0);
        axis = shop.Axes[saw].IsOneWindow ? null : shop.Axes[saw];
        Start = shop.Start[saw];
    }

    public int Width { get; }

    public JobNumbers[] Jobs { get; }

    /// <summary>Seconds, by job before times <see cref="Width"/> plus job.</summary>
    public int[] SetUp { get; }

    /// <summary>The same, by job times <see cref="Width"/> plus job before.</summary>
    public int[] SetUpInto { get; }

    /// <summary>Whether seconds of set-up cost by themselves.</summary>
    public bool PaysSetUps { get; }

    public bool HasBreaks => axis is not null;

    public long Start { get; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public long TimeOf(long second) => axis is null ? second : axis.TimeOf(second);
}
