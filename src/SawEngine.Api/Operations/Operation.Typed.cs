using System.Globalization;
using System.Text.Json;
using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Canonical;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Operations;

/// <summary>An operation by its types: shape walk, bounds and rules, calculation, answer.</summary>
public abstract class Operation<TRequest, TResponse> : Operation
    where TRequest : class
    where TResponse : class
{
    /// <summary>Measures time.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    public override Type RequestType => typeof(TRequest);

    public override Type ResponseType => typeof(TResponse);

    /// <summary>Rules that bounds on single members cannot state; null where there are none.</summary>
    protected virtual IValidator<TRequest>? Rules => null;

    /// <summary>Unit of the request's lengths.</summary>
    protected abstract LengthUnit UnitOf(TRequest request);

    /// <summary>The request with its defaults filled, where its initial values do not do so already: what the digest is made of.</summary>
    protected virtual TRequest WithDefaults(TRequest request) => request;

    /// <summary>Calculates. The request has passed all rules; what cannot be done is part of the answer.</summary>
    protected abstract TResponse Execute(TRequest request, OperationContext context);

    /// <summary>Whether the answer plans nothing of what was asked.</summary>
    protected abstract bool IsNothingPlanned(TResponse response);

    public override Outcome Run(ReadOnlyMemory<byte> body, Preferences preferences, CancellationToken cancellation)
    {
        var read = RequestReader.Read<TRequest>(body, preferences.Lenient);
        if (read.Request is not { } request)
            return new Refused(ProblemType.InvalidShape, read.Faults);
        var faults = FaultsOf(request);
        return faults.Count > 0
            ? new Refused(ProblemType.BrokenRules, faults)
            : Answer(request, read.Ignored, preferences, cancellation);
    }

    private FaultList FaultsOf(TRequest request)
    {
        var bounds = new Bounds(UnitOf(request));
        bounds.Check(request);
        if (Rules is { } rules && !bounds.TooMany)
        {
            foreach (var failure in rules.Validate(request).Errors)
                bounds.Faults.Add(JsonPointer.OfPropertyPath(failure.PropertyName), failure.ErrorCode, failure.ErrorMessage);
        }
        return bounds.Faults;
    }

    private Answered Answer(TRequest request, FaultList ignored, Preferences preferences, CancellationToken cancellation)
    {
        var own = (request as ITimeLimited)?.TimeLimitSeconds;
        var wait = request is ITimeLimited && own is null ? preferences.WaitSeconds : null;
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds((double)Math.Min(own ?? wait ?? Limits.Seconds, Limits.Seconds)), Clock);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(limit.Token, cancellation);
        var context = new OperationContext(RequestDigest.Of(WithDefaults(request)), Clock, stop.Token);
        context.Warnings.AddRange(WarningsOf(ignored));
        var response = Execute(request, context);
        var calculation = context.Elapsed;
        return new(JsonSerializer.SerializeToUtf8Bytes(response, WireJson.Options), IsNothingPlanned(response), calculation, Applied(preferences, wait));
    }

    /// <summary>One for each member, at the first place where it was ignored, in whatever items of lists it stands.</summary>
    private static IEnumerable<WarningJson> WarningsOf(FaultList ignored) => ignored.Kept
        .GroupBy(fault => string.Join('/', fault.Pointer!.Split('/').Select(step => int.TryParse(step, CultureInfo.InvariantCulture, out _) ? "*" : step)), StringComparer.Ordinal)
        .Select(places => new WarningJson
        {
            Code = places.First().Code,
            Pointer = places.First().Pointer,
            Detail = places.First().Detail + (places.Count() == 1 ? " It was ignored." : $" It was ignored, here and in {places.Count() - 1} places alike."),
        });

    private static List<string> Applied(Preferences preferences, int? wait)
    {
        var applied = new List<string>();
        if (preferences.Lenient)
            applied.Add("handling=lenient");
        if (wait is { } seconds)
            applied.Add("wait=" + seconds.ToString(CultureInfo.InvariantCulture));
        return applied;
    }
}
