using System.Net;
using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authorization;

namespace SawEngine.Api.Http.Security;

/// <summary>Where keys are configured, every path needs one that does not say otherwise; where none are, the service is open.</summary>
internal static partial class KeyedAccess
{
    public static void AddKeyedAccess(this IServiceCollection services)
    {
        services.AddSingleton(static provider => ApiKeys.Read(provider.GetRequiredService<IConfiguration>()));
        // The core alone: cookies and the key ring that protects them are not used and would need a disk.
        services.AddAuthenticationCore(static options =>
        {
            options.AddScheme(ApiKeyHandler.SchemeName, static scheme => scheme.HandlerType = typeof(ApiKeyHandler));
            options.DefaultScheme = ApiKeyHandler.SchemeName;
        });
        services.AddSingleton(UrlEncoder.Default);
        services.AddTransient<ApiKeyHandler>();
        services.AddAuthorization();
        services.AddOptions<AuthorizationOptions>().Configure<ApiKeys>(static (options, keys) =>
        {
            if (keys.AreRequired)
                options.FallbackPolicy = new AuthorizationPolicyBuilder(ApiKeyHandler.SchemeName).RequireAuthenticatedUser().Build();
        });
    }

    public static void UseKeyedAccess(this WebApplication app)
    {
        var keys = app.Services.GetRequiredService<ApiKeys>();
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("SawEngine.Keys");
        app.UseAuthentication();
        app.Use(async (http, next) =>
        {
            using var scope = KeyId(http) is { } id ? log.BeginScope(new Dictionary<string, object?> { ["KeyId"] = id }) : null;
            await next(http);
        });
        app.UseAuthorization();
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            if (!keys.AreRequired && app.Urls.FirstOrDefault(url => !IsLoopback(url)) is { } url)
                LogOpen(log, url);
        });
    }

    /// <summary>Id of the caller's key; null where it has none.</summary>
    public static string? KeyId(HttpContext http) => http.User.FindFirstValue(ClaimTypes.NameIdentifier);

    /// <summary>Whether only this machine can reach an address.</summary>
    internal static bool IsLoopback(string url)
    {
        var address = BindingAddress.Parse(url);
        return address.IsUnixPipe
            || address.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(address.Host, out var ip) && IPAddress.IsLoopback(ip));
    }

    [LoggerMessage(LogLevel.Warning, "Everyone who reaches {Url} may calculate: no keys are configured. Make one with the verb `key ID` and set ApiKeys__0__Id and ApiKeys__0__Sha256.")]
    private static partial void LogOpen(ILogger logger, string url);
}
