using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace SawEngine.Api.Http.Security;

/// <summary>Tells callers by the key in the header <c>X-Api-Key</c>; a missing, malformed and unknown key are refused alike.</summary>
internal sealed class ApiKeyHandler(IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, ApiKeys keys)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    /// <summary>Name of the scheme, in <c>WWW-Authenticate</c> and in the OpenAPI documents.</summary>
    public const string SchemeName = "ApiKey";

    /// <summary>The header that carries the key. A key anywhere else, such as in the query, is not looked at.</summary>
    public const string Header = "X-Api-Key";

    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (Request.Headers[Header] is not [{ Length: > 0 } presented] || keys.Find(presented) is not { } id)
            return Task.FromResult(AuthenticateResult.NoResult());
        var identity = new ClaimsIdentity([new Claim(ClaimTypes.NameIdentifier, id)], SchemeName);
        return Task.FromResult(AuthenticateResult.Success(new(new ClaimsPrincipal(identity), SchemeName)));
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        Response.StatusCode = StatusCodes.Status401Unauthorized;
        Response.Headers[HeaderNames.WWWAuthenticate] = SchemeName;
        return Task.CompletedTask;
    }
}
