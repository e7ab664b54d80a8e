using SawEngine.Core.SetUps;

namespace SawEngine.Core.Tests.SetUps;

public class SetUpRulesTests
{
    private static readonly SetUpTimes Times = new(Section: 300, GradeGroup: 120, Blade: 900);
    private static readonly SetUpState Round = new("round-50", "alloy", "B1");

    [Fact]
    public void Equal_set_ups_need_nothing() => Assert.Empty(SetUpRules.Between(Round, Round with { }, Times));

    [Fact]
    public void What_changes_is_set_up_in_the_order_grade_group_blade_section() => Assert.Equal(
        [new("gradeGroup", 120), new("blade", 900), new("section", 300)],
        SetUpRules.Between(Round, new("tube-60", "stainless", "B2"), Times));

    [Fact]
    public void Only_what_changes_is_set_up() => Assert.Equal(
        [new SetUpPart("section", 300)], SetUpRules.Between(Round, Round with { Section = "tube-60" }, Times));

    [Fact]
    public void What_is_unknown_at_the_start_is_always_set_up() => Assert.Equal(
        ["gradeGroup", "blade", "section"], SetUpRules.Between(new(null, null, null), Round, Times).Select(part => part.Kind));

    [Fact]
    public void What_a_job_does_not_care_about_is_not_set_up_and_stays()
    {
        var to = new SetUpState("tube-60", null, null);
        Assert.Equal(["section"], SetUpRules.Between(Round, to, Times).Select(part => part.Kind));
        Assert.Equal(new("tube-60", "alloy", "B1"), SetUpRules.After(Round, to));
    }

    [Fact]
    public void Parts_of_no_duration_are_left_out() =>
        Assert.Empty(SetUpRules.Between(Round, new("tube-60", "stainless", "B2"), new(0, 0, 0)));

    [Fact]
    public void Seconds_are_the_sum_of_the_parts() => Assert.Equal(
        1320, SetUpRules.Seconds(Round, new("tube-60", "stainless", "B2"), Times));

    [Fact]
    public void Ids_are_compared_ordinally() => Assert.Equal(
        ["section"], SetUpRules.Between(Round, Round with { Section = "ROUND-50" }, Times).Select(part => part.Kind));

    [Fact]
    public void A_kind_that_is_not_between_jobs_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SetUpRules.Seconds(SetUpRules.BladeWorn, Round, Round, Times));
}
