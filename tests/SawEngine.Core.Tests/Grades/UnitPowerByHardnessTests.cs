using SawEngine.Core.Grades;

namespace SawEngine.Core.Tests.Grades;

/// <summary>Machinery's Handbook, 31st ed., p. 1147, table 1b: unit power of steels by Brinell hardness, sharp tool, in kW per cm3/s. Every row of it.</summary>
public sealed class UnitPowerByHardnessTests
{
    private const string Plain = "plain carbon steels";
    private const string Free = "free-machining steels 11xx";
    private const string Resulfurized = "free-machining steels 1137 to 1151";
    private const string AlloyA = "alloy steels 41xx, 4340, 51xx, 6150, 8640";
    private const string AlloyB = "alloy steels 4130, 4320, 8620, 8630";
    private const string Manganese = "alloy steels 1330, 1340, E52100";

    /// <summary>By band of 20 HB from 80 up, plain carbon, 11xx, 1137 to 1151, alloy A, alloy B, 1330; 0 where the table is blank.</summary>
    private static readonly double[][] s_rows =
    [
        [1.72, 0, 0, 0, 0, 0], [1.80, 1.12, 0, 0, 0, 0], [1.88, 1.15, 0, 0, 0, 0], [2.02, 1.20, 0, 1.69, 1.53, 0], [2.13, 1.31, 0, 1.77, 1.61, 2.16],
        [2.24, 1.36, 1.39, 1.88, 1.69, 2.27], [2.32, 0, 1.50, 1.97, 1.77, 2.38], [2.43, 0, 1.56, 2.07, 1.91, 0], [2.51, 0, 1.69, 2.18, 2.02, 0],
        [2.59, 0, 0, 2.29, 2.10, 0], [2.73, 0, 0, 2.38, 2.18, 0], [2.81, 0, 0, 2.48, 2.27, 0], [2.89, 0, 0, 2.62, 2.43, 0], [3.11, 0, 0, 2.73, 0, 0],
    ];

    public static TheoryData<string, int, double> Rows
    {
        get
        {
            var rows = new TheoryData<string, int, double>();
            string[] groups = [Plain, Free, Resulfurized, AlloyA, AlloyB, Manganese];
            for (var band = 0; band < s_rows.Length; band++)
            {
                for (var group = 0; group < groups.Length; group++)
                {
                    if (s_rows[band][group] > 0)
                        rows.Add(groups[group], 90 + 20 * band, s_rows[band][group]);
                }
            }
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Unit_power_by_hardness_is_the_handbooks_within_two_percent(string group, int hardness, double kilowattsPerCm3PerSecond)
    {
        var found = (double)Table(group).At(hardness);
        Assert.InRange(found, kilowattsPerCm3PerSecond / 60 * 0.98, kilowattsPerCm3PerSecond / 60 * 1.02);
    }

    [Fact]
    public void All_47_rows_of_the_table_are_held() => Assert.Equal(47, Rows.Count);

    [Fact]
    public void Unit_power_runs_straight_between_the_bands_and_stays_beyond_them()
    {
        Assert.Equal(0.0307m, Table(Plain).At(120m)); // between 1.80 and 1.88
        Assert.Equal(0.0287m, Table(Plain).At(1m));
        Assert.Equal(0.0518m, Table(Plain).At(1000m));
    }

    /// <summary>The single values of grades are of the same table at about the middle of their hardness; they were rounded to whole rows.</summary>
    [Fact]
    public void Single_unit_powers_of_grades_agree_with_the_table_within_four_percent()
    {
        var grades = GradeCatalog.Standard.Items.Where(grade => grade.UnitPowerByHardness is not null).ToList();
        Assert.True(grades.Count >= 46);
        Assert.All(grades, grade => Assert.InRange(
            grade.UnitPowerKilowattsPerCm3PerMinute.Value / grade.UnitPowerByHardness!.At((grade.LowestHardnessHb + grade.HighestHardnessHb) / 2), 0.96m, 1.04m));
    }

    [Theory]
    [InlineData("1045", 250, 2.51)]
    [InlineData("4140 annealed", 310, 2.48)]
    [InlineData("8620", 250, 2.02)]
    [InlineData("S355J2", 190, 2.24)]
    public void Hardness_of_a_callers_grade_sets_its_unit_power(string like, int hardness, double kilowattsPerCm3PerSecond)
    {
        var power = GradeCatalog.Standard.FromCaller(new() { Designation = "mine", LikeGrade = like, Density = new(7850m), HardnessHb = hardness })!.UnitPowerKilowattsPerCm3PerMinute;
        Assert.InRange((double)power.Value * 60, kilowattsPerCm3PerSecond * 0.98, kilowattsPerCm3PerSecond * 1.02);
        Assert.Equal(Confidence.CommonPractice, power.Confidence);
        Assert.Contains($"at {hardness} HB", power.Source, StringComparison.Ordinal);
    }

    private static UnitPowerByHardness Table(string group) => GradeCatalog.Standard.UnitPowers.Single(table => table.Group == group);
}
