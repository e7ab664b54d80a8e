namespace SawEngine.Core.Grades;

/// <summary>Makes a grade that the request states itself: by itself where it states all, else completed from the grade that it is like.</summary>
internal static class GradeFromCaller
{
    /// <summary>
    /// Loss of speed and rate per Brinell point above 200 HB and above the like grade: about 4 % per 10 HB, not below 0.3 of the rest. From memory.
    /// </summary>
    public const decimal LossPerBrinell = 0.004m;
    public const decimal SoftBrinell = 200m;
    public const decimal LeastHardnessFactor = 0.3m;

    public static Grade Complete(CallerGrade stated, Grade like, IReadOnlyList<string> groupCautionCodes)
    {
        var hardness = HardnessFactor(stated.HardnessHb, like.HighestHardnessHb);
        var speed = Stated(stated.ReferenceBladeSpeed) ?? Scaled(like, like.ReferenceBladeSpeed, hardness, (value, factor) => value * factor);
        var rateFactor = speed.Value.MetersPerMinute / like.ReferenceBladeSpeed.Value.MetersPerMinute;
        return new Grade
        {
            Designation = stated.Designation,
            Designations = [stated.Designation],
            Group = stated.LikeGrade is null ? like.Group : stated.Group ?? like.Group,
            Condition = stated.Condition ?? like.Condition,
            LowestHardnessHb = stated.HardnessHb ?? like.LowestHardnessHb,
            HighestHardnessHb = stated.HardnessHb ?? like.HighestHardnessHb,
            Density = new(stated.Density, "request", Confidence.Caller),
            ReferenceBladeSpeed = speed,
            ReferenceCuttingRate = Stated(stated.ReferenceCuttingRate) ?? Scaled(like, like.ReferenceCuttingRate, rateFactor, (value, factor) => value * factor),
            UnitPowerKilowattsPerCm3PerMinute = Stated(stated.UnitPowerKilowattsPerCm3PerMinute) ?? UnitPower(like, stated.HardnessHb),
            UnitPowerByHardness = like.UnitPowerByHardness,
            BladeLifeSquareMeters = Stated(stated.BladeLifeSquareMeters) ?? TakenOver(like, like.BladeLifeSquareMeters),
            WorkHardening = stated.WorkHardening ?? like.WorkHardening,
            Coolant = stated.Coolant,
            // A stated group cannot drop what is dangerous about the like grade, nor the other way round.
            CautionCodes = [.. like.CautionCodes.Union(groupCautionCodes, StringComparer.Ordinal)],
        };
    }

    /// <summary>A grade that states all its values. Without a group its chips are kept apart from all others.</summary>
    public static Grade Own(CallerGrade stated, ChipGroup? group) => new()
    {
        Designation = stated.Designation,
        Designations = [stated.Designation],
        Group = group?.Group ?? "other: " + stated.Designation,
        Condition = stated.Condition ?? "as supplied",
        LowestHardnessHb = stated.HardnessHb!.Value,
        HighestHardnessHb = stated.HardnessHb.Value,
        Density = new(stated.Density, "request", Confidence.Caller),
        ReferenceBladeSpeed = Stated(stated.ReferenceBladeSpeed)!,
        ReferenceCuttingRate = Stated(stated.ReferenceCuttingRate)!,
        UnitPowerKilowattsPerCm3PerMinute = Stated(stated.UnitPowerKilowattsPerCm3PerMinute)!,
        BladeLifeSquareMeters = Stated(stated.BladeLifeSquareMeters)!,
        WorkHardening = stated.WorkHardening ?? false,
        Coolant = stated.Coolant,
        CautionCodes = group?.CautionCodes ?? [],
    };

    /// <summary>By the stated hardness where the like grade is of a table by hardness: that the caller's is of the same group of steels is taken for granted.</summary>
    private static Sourced<decimal> UnitPower(Grade like, decimal? hardness) => hardness is { } stated && like.UnitPowerByHardness is { } table
        ? new(table.At(stated), FormattableString.Invariant($"{table.Source}, {table.Group} at {stated} HB; taken over from {like.Designation}"), Confidence.CommonPractice)
        : TakenOver(like, like.UnitPowerKilowattsPerCm3PerMinute);

    /// <summary>1 where no hardness is stated or it is within the like grade's or below 200 HB.</summary>
    private static decimal HardnessFactor(decimal? hardness, decimal likeHardness)
    {
        if (hardness is not { } stated)
            return 1m;
        var excess = stated - Math.Max(SoftBrinell, likeHardness);
        return excess <= 0m ? 1m : Math.Max(LeastHardnessFactor, 1m - LossPerBrinell * Math.Min(excess, 1000m));
    }

    private static Sourced<T>? Stated<T>(T? value) where T : struct =>
        value is { } stated ? new(stated, "request", Confidence.Caller) : null;

    private static Sourced<T> TakenOver<T>(Grade like, Sourced<T> value) =>
        new(value.Value, $"{value.Source}; taken over from {like.Designation}", Confidence.FromMemory);

    private static Sourced<T> Scaled<T>(Grade like, Sourced<T> value, decimal factor, Func<T, decimal, T> times) =>
        factor == 1m ? TakenOver(like, value) : TakenOver(like, value with { Value = times(value.Value, factor) });
}
