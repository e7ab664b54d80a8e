namespace SawEngine.Api.Wire;

/// <summary>A kind of problem (RFC 9457): its type and title are stable.</summary>
/// <param name="Status">HTTP status.</param>
/// <param name="Name">Last part of the type.</param>
/// <param name="Title">What it is, for a person.</param>
public sealed record ProblemType(int Status, string Name, string Title)
{
    public static readonly ProblemType InvalidShape = new(400, "invalid-shape", "The request does not have the shape that is documented.");
    public static readonly ProblemType BadRequest = new(400, "bad-request", "The request could not be read.");
    public static readonly ProblemType Unauthorized = new(401, "unauthorized", "A valid key is needed.");
    public static readonly ProblemType NotFound = new(404, "not-found", "Nothing is known here by this path or designation.");
    public static readonly ProblemType MethodNotAllowed = new(405, "method-not-allowed", "The path does not take this method.");
    public static readonly ProblemType NotAcceptable = new(406, "not-acceptable", "The caller does not accept what is answered here.");
    public static readonly ProblemType RequestTimeout = new(408, "request-timeout", "The request came in too slowly.");
    public static readonly ProblemType TooLarge = new(413, "too-large", "The body is too large.");
    public static readonly ProblemType UnsupportedMediaType = new(415, "unsupported-media-type", "The body is not JSON in UTF-8, plain or packed with gzip.");
    public static readonly ProblemType BrokenRules = new(422, "broken-rules", "The request has the right shape, but breaks rules.");
    public static readonly ProblemType TooManyRequests = new(429, "too-many-requests", "This caller's share is used up.");
    public static readonly ProblemType InternalError = new(500, "internal-error", "The service failed.");
    public static readonly ProblemType Busy = new(503, "busy", "The service is busy.");
    public static readonly ProblemType OutOfTime = new(503, "out-of-time", "The calculation did not end in time.");

    /// <summary>All kinds.</summary>
    public static readonly IReadOnlyList<ProblemType> All =
    [
        InvalidShape, BadRequest, Unauthorized, NotFound, MethodNotAllowed, NotAcceptable, RequestTimeout, TooLarge, UnsupportedMediaType, BrokenRules,
        TooManyRequests, InternalError, Busy, OutOfTime,
    ];

    /// <summary>The stable type.</summary>
    public string Type => "urn:sawengine:problem:" + Name;

    /// <summary>The kind for a status that carries no list of faults.</summary>
    public static ProblemType Of(int status) =>
        All.FirstOrDefault(type => type.Status == status && type != InvalidShape && type != BrokenRules)
        ?? new(status, status >= 500 ? InternalError.Name : BadRequest.Name, status >= 500 ? InternalError.Title : BadRequest.Title);
}
