using System.Net.Sockets;
using System.Text;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Tests.Http;

/// <summary>The real server on a port of its own.</summary>
public class KestrelServer : WebApplicationFactory<Program>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly INester? _nester;

    public KestrelServer() : this(null)
    {
    }

    internal KestrelServer(INester? nester)
    {
        _nester = nester;
        UseKestrel(0);
        StartServer();
        Client = CreateClient();
        Address = Client.BaseAddress!;
    }

    public HttpClient Client { get; }

    public Uri Address { get; }

    public CapturedLog Log { get; } = new();

    /// <summary>Sends bytes as they are and reads until the server closes the connection.</summary>
    public async Task<string> Raw(string request)
    {
        using var limit = new CancellationTokenSource(Patience);
        using var socket = await Connect(request);
        using var read = new MemoryStream();
        try
        {
            await socket.GetStream().CopyToAsync(read, limit.Token);
        }
        catch (IOException)
        {
            // A server that refuses before it has read everything may reset the connection behind its answer.
        }
        return Encoding.UTF8.GetString(read.ToArray());
    }

    /// <summary>Sends bytes as they are and leaves the connection open.</summary>
    public async Task<TcpClient> Connect(string request)
    {
        var socket = new TcpClient();
        await socket.ConnectAsync(Address.Host, Address.Port);
        await socket.GetStream().WriteAsync(Encoding.Latin1.GetBytes(request));
        return socket;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.ConfigureTestServices(services =>
    {
        services.AddSingleton<ILoggerProvider>(Log);
        if (_nester is not null)
            services.AddSingleton(_nester);
    });
}
