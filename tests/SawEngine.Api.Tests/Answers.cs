using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests;

/// <summary>Compares answers outside their timing.</summary>
internal static class Answers
{
    public static string WithoutTiming(string json)
    {
        var answer = JsonNode.Parse(json)!.AsObject();
        Assert.True(answer.Remove("timing"));
        return answer.ToJsonString();
    }
}
