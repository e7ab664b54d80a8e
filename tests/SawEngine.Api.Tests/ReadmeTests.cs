using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace SawEngine.Api.Tests;

/// <summary>What the tour of the README shows stands so in the example's answer, which a test makes anew.</summary>
public partial class ReadmeTests
{
    [Fact]
    public void The_tour_shows_what_the_example_answers()
    {
        var plan = JsonNode.Parse(Repository.Read("docs", "examples", "booking-plan.json"))!;
        var shown = JsonBlock().Matches(Repository.Read("README.md")).Select(block => JsonNode.Parse(block.Groups[1].Value)!).ToList();

        Assert.True(shown.Count >= 5, $"{shown.Count} blocks");
        foreach (var node in shown.SelectMany(node => node is JsonArray list ? list.OfType<JsonNode>() : [node]))
            Assert.True(All(plan).Any(part => Holds(part, node)), node.ToJsonString());
    }

    private static IEnumerable<JsonNode> All(JsonNode node) => node switch
    {
        JsonObject one => one.Select(member => member.Value).OfType<JsonNode>().SelectMany(All).Prepend(node),
        JsonArray list => list.OfType<JsonNode>().SelectMany(All).Prepend(node),
        _ => [node],
    };

    private static bool Holds(JsonNode? whole, JsonNode? shown) => (whole, shown) switch
    {
        (JsonObject one, JsonObject other) => other.All(member => one.ContainsKey(member.Key) && Holds(one[member.Key], member.Value)),
        (JsonArray one, JsonArray other) => one.Count == other.Count && one.Zip(other).All(pair => Holds(pair.First, pair.Second)),
        _ => JsonNode.DeepEquals(whole, shown),
    };

    [GeneratedRegex("```json\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex JsonBlock();
}
