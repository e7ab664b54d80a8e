using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>Refuses callers who accept none of the media types that an endpoint says it answers with.</summary>
internal static class Accepted
{
    public static void UseAccepted(this WebApplication app) => app.Use((http, next) =>
    {
        if (http.Request.Headers.Accept.Count == 0)
            return next(http);
        var offered = Offered(http.GetEndpoint());
        return offered.Count == 0 || offered.Any(type => Admits(http.Request.Headers.Accept, type))
            ? next(http)
            : ProblemWriter.Write(http, ProblemJson.Of(ProblemType.NotAcceptable, $"Accept must admit {string.Join(" or ", offered)}."));
    });

    /// <summary>Whether an Accept header admits a media type; the most specific range that covers it decides (RFC 9110).</summary>
    internal static bool Admits(IList<string> accept, string mediaType)
    {
        if (accept.Count == 0 || !MediaTypeHeaderValue.TryParseList(accept, out var ranges))
            return true;
        var type = MediaTypeHeaderValue.Parse(mediaType);
        return ranges.Where(range => Covers(range, type)).OrderByDescending(Precision).FirstOrDefault() is { Quality: not 0 };
    }

    private static IReadOnlyList<string> Offered(Endpoint? endpoint) =>
    [
        .. (endpoint?.Metadata.GetOrderedMetadata<IProducesResponseTypeMetadata>() ?? [])
            .Where(answer => answer.StatusCode == StatusCodes.Status200OK)
            .SelectMany(answer => answer.ContentTypes)
            .Distinct(StringComparer.OrdinalIgnoreCase),
    ];

    private static bool Covers(MediaTypeHeaderValue range, MediaTypeHeaderValue type) =>
        range.MatchesAllTypes
        || (range.Type.Equals(type.Type, StringComparison.OrdinalIgnoreCase)
            && (range.MatchesAllSubTypes || range.SubType.Equals(type.SubType, StringComparison.OrdinalIgnoreCase)));

    private static int Precision(MediaTypeHeaderValue range) => range.MatchesAllTypes ? 0 : range.MatchesAllSubTypes ? 1 : 2;
}
