using SawEngine.Api.Wire;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>What a caller should know of a nesting request before anything is nested.</summary>
internal static class NestWarnings
{
    public static IEnumerable<WarningJson> Of(NestRequest request)
    {
        if (request.Cut.Trim > 0 && request.Stock.All(item => item.EndCondition == EndCondition.Sawn))
        {
            yield return new()
            {
                Code = WarningCode.TrimNotUsed,
                Pointer = "#/cut/trim",
                Detail = "All stock has sawn ends, which need no trim; state `endCondition` where an end is raw.",
            };
        }
    }
}
