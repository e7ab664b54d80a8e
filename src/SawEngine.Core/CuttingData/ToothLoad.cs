using SawEngine.Core.Grades;
using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>Lightest and heaviest load per tooth (chip thickness) in mm on the way through a section.</summary>
internal sealed class ToothLoad
{
    private readonly CutProfile profile;
    private readonly double coarsestPitch;
    private readonly double largest;
    private readonly double fullyLoadedTeeth;
    private readonly double gulletRoom;

    public ToothLoad(CutProfile profile, Grade grade, Blade blade, CuttingParameters parameters)
    {
        this.profile = profile;
        Pitch = TeethCount.MillimetersPerInch / (double)blade.MeanTeethPerInch;
        coarsestPitch = TeethCount.MillimetersPerInch / (double)blade.CoarsestTeethPerInch;
        largest = (double)parameters.LargestToothLoadMillimeters;
        Smallest = grade.WorkHardening ? (double)parameters.SmallestToothLoadMillimeters : 0;
        fullyLoadedTeeth = (double)parameters.FewestFullyLoadedTeeth;
        gulletRoom = (double)parameters.GulletShare * Pitch * Pitch / (double)parameters.ChipPacking;
    }

    /// <summary>Mean pitch in mm.</summary>
    public double Pitch { get; }

    /// <summary>The load below which the grade work-hardens; 0 where it does not.</summary>
    public double Smallest { get; }

    /// <summary>The lightest load; 0 where the grade does not work-harden. The room in the gullet comes first.</summary>
    public double LeastAt(CutSlice slice) => Math.Min(Smallest, GulletLimit(slice.LongestRun));

    /// <summary>The heaviest load: by chip thickness, less where few teeth share the feed, and by the gullet; never below the lightest.</summary>
    public double MostAt(CutSlice slice) =>
        Math.Max(LeastAt(slice), Math.Min(largest * SharedByTeeth(slice), GulletLimit(slice.LongestRun)));

    /// <summary>The chip of the longest run, loosely packed, must fit into the gullet: run · h · packing &lt;= gullet area.</summary>
    private double GulletLimit(double run) => run > 0 ? gulletRoom / run : double.MaxValue;

    /// <summary>Under three teeth in the shortest run the load falls in proportion. The entry into a solid is short and does not count.</summary>
    private double SharedByTeeth(CutSlice slice)
    {
        if (profile.IsSolid)
            return 1;
        var teeth = Math.Max(slice.ShortestRun, profile.ShortestRun) / coarsestPitch;
        return Math.Min(1, teeth / fullyLoadedTeeth);
    }
}
