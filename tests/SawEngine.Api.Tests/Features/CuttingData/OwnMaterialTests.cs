using System.Text.Json.Nodes;
using static SawEngine.Api.Tests.Features.CuttingData.CuttingDataBody;

namespace SawEngine.Api.Tests.Features.CuttingData;

/// <summary>Sections and grades of the request's own that no catalog has.</summary>
[Collection(HostCollection.Name)]
public sealed class OwnMaterialTests(ServiceHost host)
{
    /// <summary>By hand: two skins of 60 x 4 mm and three webs of 3 mm over 48 mm are 2 x 240 + 3 x 144 = 912 mm2.</summary>
    [Fact]
    public async Task Example_of_the_concepts_is_cut()
    {
        var request = Of("door profile", "EDM graphite", """, "sawIds": ["square"]""");
        var example = JsonNode.Parse(JsonIn(Repository.Read("docs", "concepts.md"), "contactWidths"))!;
        request["sections"] = example["sections"]!.DeepClone();
        request["grades"] = example["grades"]!.DeepClone();

        var answer = await host.Post(Url, request.ToJsonString(), 200);

        var result = answer["results"]![0]!;
        Assert.Equal(912m, (decimal)result["areaMm2"]!);
        Assert.Equal("caller", (string?)result["bladeLifeM2"]!["confidence"]);
        // To a tenth: three millimeters of web at the coarsest tooth of the finest usual blade: any other has less than one tooth in it.
        Assert.Equal(("27x0.9-10/14", 3m * 10m / 25.4m), ((string?)result["bladeId"], (decimal)result["teethInWork"]!["min"]!), ByTooth);
        string[] codes = [.. answer["cautions"]!.AsArray().Select(caution => (string)caution!["code"]!)];
        Assert.Contains("graphite_dust", codes);
        Assert.Contains("coolant_not_allowed", codes);
    }

    /// <summary>Machinery's Handbook, 31st ed., p. 1147, table 1b: plain carbon steel at 250 HB takes 2.51/2.13 of the power at 170 HB; at equal speed and rate it shows in the motor.</summary>
    [Fact]
    public async Task Power_follows_the_hardness_of_a_grade_of_the_request()
    {
        async Task<decimal> PowerAt(int hardness)
        {
            var request = Of("Square 100", "mine", """, "sawIds": ["swivel"], "bladeId": "3/4" """);
            request["grades"] = JsonNode.Parse($$"""[{"gradeId": "mine", "densityKgPerM3": 7850, "likeGrade": "1045", "hardnessHb": {{hardness}}, "bladeSpeedMPerMin": 60, "cuttingRateCm2PerMin": 50}]""");
            return (decimal)(await host.Post(Url, request.ToJsonString(), 200))["results"]![0]!["powerKw"]!;
        }
        Assert.InRange(await PowerAt(250) / await PowerAt(170), 2.51m / 2.13m * 0.98m, 2.51m / 2.13m * 1.02m);
    }

    private static readonly EqualityComparer<(string?, decimal)> ByTooth =
        EqualityComparer<(string?, decimal)>.Create((a, b) => a.Item1 == b.Item1 && Math.Abs(a.Item2 - b.Item2) < 0.051m);

    /// <summary>The block of JSON in a document that has a member.</summary>
    private static string JsonIn(string document, string member) => document.ReplaceLineEndings("\n").Split("```json\n").Skip(1)
        .Select(part => part[..part.IndexOf("```", StringComparison.Ordinal)]).Single(json => json.Contains($"\"{member}\"", StringComparison.Ordinal));
}
