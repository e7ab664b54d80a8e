using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>A parameter of a request for reference data.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it does.</param>
/// <param name="Values">Its known values; null where any text may be one.</param>
/// <param name="IsFilter">Whether it picks items by one of their values.</param>
public sealed record ReferenceParameter(string Name, string Description, IReadOnlyList<string>? Values, bool IsFilter = false)
{
    /// <summary>The parameter that names one item.</summary>
    public static readonly ReferenceParameter Designation = new(ReferenceQuery.DesignationName, "The one item of this designation.", null);

    /// <summary>What is wrong with a value; null where nothing is.</summary>
    internal LeafFault? FaultOf(string value)
    {
        if (Values is not null)
        {
            return Values.Contains(value, StringComparer.Ordinal)
                ? null
                : new(FaultCode.UnknownValue, $"Must be one of {string.Join(", ", Values)}, but is {Quoted.Text(value)}.{NearestName.Question(value, Values)}");
        }
        return value.Length > Limits.IdLength ? new(FaultCode.TooLong, $"Must be at most {Limits.IdLength} characters long, but is {value.Length}.") : null;
    }
}
