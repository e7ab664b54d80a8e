using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>Saws that tilt, and tolerances that they hold or not, in a plan.</summary>
[Collection(HostCollection.Name)]
public sealed class PlanQualityTests(ServiceHost host)
{
    private const string Url = "/v1/plans";

    /// <summary>A face at 20 and 20 needs a tilt of atan(tan 20 cos 20) = 18.88 degrees after the swivel.</summary>
    [Theory]
    [InlineData(30, 3)]
    [InlineData(18, 0)]
    public async Task Compound_miters_are_planned_on_a_saw_that_tilts_as_far(int tilt, int planned)
    {
        var answer = await host.Post(Url, PlanExample.With(request =>
        {
            request["orders"]![0]!["lines"]![0]!["firstEnd"] = JsonNode.Parse("""{"heightAngle": 20, "widthAngle": 20}""");
            request["shop"]!["saws"]![0]!["tiltRange"] = JsonNode.Parse($$"""{"toFirstEnd": {{tilt}}, "toSecondEnd": {{tilt}}}""");
        }).ToJsonString(), 200);
        var line = answer["orders"]!.AsArray().Single(order => (string?)order!["orderId"] == "SO-2")!["lines"]!.AsArray().Single(one => (string?)one!["lineId"] == "20")!;
        Assert.Equal(planned, (int)line["planned"]!);
        Assert.Equal(planned == 0, answer["unplaced"]!.AsArray().Any(row => (string?)row!["reason"] == "no_saw_cuts_miter"));
        Assert.DoesNotContain(answer["warnings"]!.AsArray(), warning => (string?)warning!["code"] == "not_verified");
    }

    /// <summary>2350 mm are one stroke of 3000: 0.01 + 20e-6 x 2350 + sqrt(2) x 0.05 = 0.128 mm.</summary>
    [Theory]
    [InlineData(0.12, true)]
    [InlineData(0.13, false)]
    public async Task Tolerance_that_the_saw_does_not_hold_is_warned_of(double side, bool isWarned)
    {
        var answer = await host.Post(Url, PlanExample.With(request =>
            request["orders"]![0]!["lines"]![0]!["tolerance"] = new JsonObject { ["plus"] = side, ["minus"] = side }).ToJsonString(), 200);
        var warning = answer["warnings"]!.AsArray().SingleOrDefault(one => (string?)one!["code"] == "tolerance_not_held");
        Assert.Equal(isWarned, warning is not null);
        if (warning is not null)
        {
            Assert.Equal("SO-2", (string?)warning["orderId"]);
            Assert.Contains("1.07 times what the tolerance allows", (string?)warning["detail"], StringComparison.Ordinal);
            Assert.Contains("bias and scale", (string?)warning["detail"], StringComparison.Ordinal);
        }
    }
}
