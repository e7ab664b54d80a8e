using System.Text;
using System.Text.Json.Nodes;
using FluentValidation;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>Reads requests for plans as the service does, shape, bounds and rules, and stops before planning.</summary>
internal sealed class PlanReading : Operation<PlanRequest, PlanReading.Digest>
{
    private PlanRequest? _request;

    internal sealed record Digest(string Value);

    public override string Verb => "read-plan";

    public override string OperationId => "readPlan";

    public override string Path => "/v1/plan-readings";

    public override string Tag => "Plans";

    public override string Summary => "";

    public override string Description => "";

    public override string Example => "";

    protected override IValidator<PlanRequest> Rules { get; } = new PlanRequestRules();

    protected override LengthUnit UnitOf(PlanRequest request) => request.LengthUnit;

    protected override Digest Execute(PlanRequest request, OperationContext context)
    {
        _request = request;
        return new(context.RequestDigest);
    }

    protected override bool IsNothingPlanned(Digest response) => false;

    /// <summary>What is wrong, as <c>pointer code</c>; empty where nothing is.</summary>
    public static IReadOnlyList<string> FaultsOf(JsonNode request) => Outcome(request.ToJsonString(), out _) is Refused refused
        ? [.. refused.Faults.Kept.Select(fault => fault.Pointer + " " + fault.Code)]
        : [];

    /// <summary>Sentences about what is wrong.</summary>
    public static IReadOnlyList<string> DetailsOf(JsonNode request) => Outcome(request.ToJsonString(), out _) is Refused refused
        ? [.. refused.Faults.Kept.Select(fault => fault.Detail)]
        : [];

    /// <summary>A request that passes.</summary>
    public static PlanRequest Read(string json)
    {
        var outcome = Outcome(json, out var reading);
        return reading._request ?? throw new InvalidOperationException(string.Join("; ", ((Refused)outcome).Faults.Kept));
    }

    /// <summary>A request that passes.</summary>
    public static PlanRequest Read(JsonNode request) => Read(request.ToJsonString());

    /// <summary>What becomes of a request.</summary>
    public static Outcome Outcome(string json, out PlanReading reading)
    {
        reading = new PlanReading();
        return reading.Run(Encoding.UTF8.GetBytes(json), Preferences.None, CancellationToken.None);
    }
}
