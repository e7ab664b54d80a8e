using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.Shop;

/// <summary>A saw from wire to trade, and the defaults that fill what it leaves open; the rules have passed.</summary>
/// <param name="Saw">The saw.</param>
/// <param name="Defaults">The defaults used; usual blades by their number.</param>
public sealed record SawMapping(Saw Saw, IReadOnlyList<DefaultValue> Defaults)
{
    /// <summary>The saw with its blades, ordered by id, ordinal.</summary>
    public static SawMapping Of(SawJson saw, IReadOnlyDictionary<string, Blade> blades, LengthScale scale)
    {
        var capacity = saw.Capacity.ToCapacity(scale);
        var defaults = SawDefaults.For(capacity);
        var used = new List<string>();
        var speeds = saw.BladeSpeedMPerMin;
        var mapped = new Saw
        {
            SawId = saw.SawId,
            Capacity = capacity,
            MiterRange = MiterRangeOf(saw),
            Cant = Angle.FromDegrees(saw.CantDegrees),
            Bundle = saw.Bundle.ToBundle(scale),
            SlowestBladeSpeed = Or(speeds is null ? null : new Speed(speeds.Min), defaults.SlowestBladeSpeed, "bladeSpeedMPerMin.min"),
            FastestBladeSpeed = Or(speeds is null ? null : new Speed(speeds.Max), defaults.FastestBladeSpeed, "bladeSpeedMPerMin.max"),
            BaseBladeSpeed = saw.BaseBladeSpeedMPerMin is { } baseSpeed ? new(baseSpeed) : null,
            WheelDiameter = scale.Read(saw.WheelDiameter),
            MotorPowerKilowatts = Or(saw.MotorPowerKw, defaults.MotorPowerKilowatts, "motorPowerKw"),
            DriveEfficiency = Or(saw.DriveEfficiency, defaults.DriveEfficiency, "driveEfficiency"),
            FastestBladeFeedMillimetersPerMinute = Or(saw.FastestBladeFeedMmPerMin, defaults.FastestBladeFeedMillimetersPerMinute, "fastestBladeFeedMmPerMin"),
            BarFeedStroke = Or(scale.Read(saw.BarFeedStroke), defaults.BarFeedStroke, "barFeedStroke"),
            LoadLimit = Or(saw.LoadLimitKg is { } limit ? new Mass(limit) : null, defaults.LoadLimit, "loadLimitKg"),
            Tail = scale.Read(saw.Tail),
            ShortestPiece = scale.Read(saw.ShortestPiece),
            LongestPiece = scale.Read(saw.LongestPiece),
            ThinnestSlice = scale.Read(saw.ThinnestSlice),
            Blades = saw.BladeIds is { } ids ? [.. ids.Order(StringComparer.Ordinal).Select(id => blades[id])] : DefaultBladesOf(capacity),
            MountedBladeId = saw.MountedBladeId,
            MachineCostPerHour = new(saw.MachineCostPerHour),
            Accuracy = new()
            {
                IndexErrorPerStroke = Or(scale.Read(saw.Accuracy.IndexErrorPerStroke), defaults.Accuracy.IndexErrorPerStroke, "accuracy.indexErrorPerStroke"),
                IndexBiasPerStroke = scale.Read(saw.Accuracy.IndexBiasPerStroke),
                ScaleErrorPpm = saw.Accuracy.ScaleErrorPpm,
                KerfError = Or(scale.Read(saw.Accuracy.KerfError), defaults.Accuracy.KerfError, "accuracy.kerfError"),
                Squareness = Or(saw.Accuracy.Squareness, defaults.Accuracy.Squareness, "accuracy.squareness"),
            },
            Times = Times(saw.Times, defaults.Times, Or),
            RateFactor = Or(saw.RateFactor, defaults.RateFactor, "rateFactor"),
            Coolant = saw.Coolant,
        };
        return new(mapped, [.. defaults.Values.Where(value => used.Contains(value.Name)), .. saw.BladeIds is null ? [UsualBlades(mapped)] : Array.Empty<DefaultValue>()]);

        T Or<T>(T? stated, T usual, string name) where T : struct
        {
            if (stated is { } value)
                return value;
            used.Add(name);
            return usual;
        }
    }

    /// <summary>The blades of a saw that lists none, by id, ordinal.</summary>
    public static IReadOnlyList<Blade> DefaultBladesOf(SawCapacity capacity) =>
        [.. DefaultBlades.For(capacity).OrderBy(blade => blade.BladeId, StringComparer.Ordinal)];

    private static DefaultValue UsualBlades(Saw saw) => new("bladeIds", saw.Blades.Count, "blades", DefaultBlades.Source, Confidence.FromMemory);

    private static MiterRange? MiterRangeOf(SawJson saw) => saw.MiterRange is null && saw.TiltRange is null ? null
        : new(Angle.FromDegrees(saw.MiterRange?.Left ?? 0m), Angle.FromDegrees(saw.MiterRange?.Right ?? 0m))
        {
            TiltToFirstEnd = Angle.FromDegrees(saw.TiltRange?.ToFirstEnd ?? 0m),
            TiltToSecondEnd = Angle.FromDegrees(saw.TiltRange?.ToSecondEnd ?? 0m),
        };

    private static SawTimes Times(SawTimesJson stated, SawTimes usual, Func<decimal?, decimal, string, decimal> or) => new()
    {
        LoadSecondsPerBar = or(stated.LoadSecondsPerBar, usual.LoadSecondsPerBar, "times.loadSecondsPerBar"),
        IndexSecondsPerStroke = or(stated.IndexSecondsPerStroke, usual.IndexSecondsPerStroke, "times.indexSecondsPerStroke"),
        ClampSecondsPerCut = or(stated.ClampSecondsPerCut, usual.ClampSecondsPerCut, "times.clampSecondsPerCut"),
        ApproachSecondsPerCut = or(stated.ApproachSecondsPerCut, usual.ApproachSecondsPerCut, "times.approachSecondsPerCut"),
        RetractSecondsPerCut = stated.RetractSecondsPerCut,
        IndexesWhileRetracting = stated.IndexesWhileRetracting,
        SwivelSeconds = or(stated.SwivelSeconds, usual.SwivelSeconds, "times.swivelSeconds"),
        UnloadSecondsPerPiece = or(stated.UnloadSecondsPerPiece, usual.UnloadSecondsPerPiece, "times.unloadSecondsPerPiece"),
        RemainderSecondsPerBar = or(stated.RemainderSecondsPerBar, usual.RemainderSecondsPerBar, "times.remainderSecondsPerBar"),
        SectionSetUpSeconds = or(stated.SectionSetUpSeconds, usual.SectionSetUpSeconds, "times.sectionSetUpSeconds"),
        AngleSetUpSeconds = stated.AngleSetUpSeconds,
        BladeChangeSeconds = or(stated.BladeChangeSeconds, usual.BladeChangeSeconds, "times.bladeChangeSeconds"),
        GradeGroupSetUpSeconds = or(stated.GradeGroupSetUpSeconds, usual.GradeGroupSetUpSeconds, "times.gradeGroupSetUpSeconds"),
    };
}
