using FluentValidation;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.CuttingData;

/// <summary><c>POST /v1/cutting-data</c> and <c>cutting-data FILE</c>.</summary>
public sealed class CuttingDataOperation : Operation<CuttingDataRequest, CuttingDataResponse>
{
    public override string Verb => "cutting-data";

    public override string OperationId => "calculateCuttingData";

    public override string Path => "/v1/cutting-data";

    public override string Tag => "Cutting data";

    public override string Summary => "Settings, time and blade wear of cuts on the saws of a shop.";

    public override string Description =>
        "Finds for each cut and saw the blade, how the section lies, blade speed, cutting rate, feed, power, time and blade life, with what set and limits them, "
        + "and ranks the saws by time. A saw that cannot make a cut is listed with the reason.";

    public override string Example => CuttingDataExample.Json;

    protected override IValidator<CuttingDataRequest> Rules { get; } = new CuttingDataRequestRules();

    protected override LengthUnit UnitOf(CuttingDataRequest request) => request.LengthUnit;

    protected override CuttingDataResponse Execute(CuttingDataRequest request, OperationContext context) => new CuttingDataAnswer(request).Write(context);

    protected override bool IsNothingPlanned(CuttingDataResponse response) => response.Status == Completion.None;
}
