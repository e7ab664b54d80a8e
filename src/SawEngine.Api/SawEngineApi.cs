using SawEngine.Api.Features.CuttingData;
using SawEngine.Api.Features.Estimates;
using SawEngine.Api.Features.NestEvaluations;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.ReferenceData;
using SawEngine.Api.Features.ScheduleEvaluations;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Features.Service;
using SawEngine.Api.Http;
using SawEngine.Api.Http.Logging;
using SawEngine.Api.Http.Security;
using SawEngine.Api.Operations;
using SawEngine.Core.Nesting;
using SawEngine.Solvers.Scheduling;
using SawEngine.Solvers.Scheduling.Explaining;

namespace SawEngine.Api;

/// <summary>Puts the service together: the one place that knows all parts.</summary>
public static partial class SawEngineApi
{
    private const string DefaultUrl = "http://localhost:5080";

    /// <summary>All operations, in the order in which they are documented. An operation is added here and nowhere else.</summary>
    public static IReadOnlyList<Operation> Operations(INester nester) =>
    [
        new PlanOperation(nester, new DispatchScheduler(), new ScheduleExplainer()),
        new EstimateOperation(nester, new DispatchScheduler()),
        new NestOperation(nester),
        new NestEvaluationOperation(nester),
        new ScheduleOperation(new DispatchScheduler(), new ScheduleExplainer()),
        new ScheduleEvaluationOperation(new DispatchScheduler(), new SequenceTimer()),
        new CuttingDataOperation(),
    ];

    /// <summary>Settings and services.</summary>
    public static void Configure(WebApplicationBuilder builder)
    {
        if (builder.Configuration["urls"] is null && builder.Configuration["http_ports"] is null)
            builder.WebHost.UseUrls(DefaultUrl);
        builder.AddLogLines();
        builder.AddServerLimits();
        builder.Services.AddSingleton(static services => Nester(services.GetRequiredService<ILoggerFactory>()));
        builder.Services.AddSingleton(static services => Operations(services.GetRequiredService<INester>()));
        builder.Services.AddSingleton(static services => Calculations.OfService(services.GetRequiredService<ILogger<Calculations>>()));
        builder.Services.AddGate();
        builder.Services.AddKeyedAccess();
        builder.Services.AddOpenApiDocuments();
    }

    /// <summary>What answers which path.</summary>
    public static void Map(WebApplication app)
    {
        app.UseRequestLog();
        app.UseSecurityHeaders();
        app.UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandler = ProblemWriter.WriteForException });
        app.UseStatusCodePages(ProblemWriter.WriteForStatus);
        app.UseOpenApiPage();
        app.UseKeyedAccess();
        app.UseAccepted();
        app.UseRateLimiter();
        app.MapOperations(app.Services.GetRequiredService<IReadOnlyList<Operation>>(), app.Services.GetRequiredService<Calculations>());
        ReferenceEndpoints.Map(app);
        app.MapService();
        app.MapOpenApiDocuments();
    }

    /// <summary>The nester, held against the verifier.</summary>
    public static INester Nester(ILoggerFactory loggers)
    {
        var log = loggers.CreateLogger("SawEngine.Nesting");
        return new CheckedNester(new Solvers.Nesting.BundledNester(new Solvers.Nesting.ColumnNester()), NestVerifier.Verify, violation => LogWithheld(log, violation.Code, violation.Detail));
    }

    [LoggerMessage(LogLevel.Error, "A nest was withheld because it breaks {Code}: {Detail}")]
    private static partial void LogWithheld(ILogger logger, string code, string detail);
}
