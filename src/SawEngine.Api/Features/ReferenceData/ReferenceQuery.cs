using Microsoft.Extensions.Primitives;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>What is asked of reference data by the parameters of a request.</summary>
/// <param name="Unit">Unit of lengths in the answer.</param>
/// <param name="Designation">The one item that is wanted; null for all.</param>
/// <param name="Filter">Value of the filter; null for all.</param>
public sealed record ReferenceQuery(LengthUnit Unit, string? Designation, string? Filter)
{
    /// <summary>Name of the parameter of path or query that names an item.</summary>
    public const string DesignationName = "designation";

    /// <summary>Name of the parameter for the unit of lengths.</summary>
    public const string LengthUnitName = "lengthUnit";

    /// <summary>Reads the parameters of a query; null where they have faults.</summary>
    public static ReferenceQuery? Read(IQueryCollection query, IReadOnlyList<ReferenceParameter> known, FaultList faults)
    {
        foreach (var name in query.Keys.Order(StringComparer.Ordinal))
            Check(name, query[name], known, faults);
        return faults.Count > 0 ? null : new(
            query[LengthUnitName] == WireEnum.Text(LengthUnit.In) ? LengthUnit.In : LengthUnit.Mm,
            query.TryGetValue(DesignationName, out var designation) ? designation.ToString() : null,
            known.FirstOrDefault(parameter => parameter.IsFilter) is { } filter && query.TryGetValue(filter.Name, out var value) ? value.ToString() : null);
    }

    private static void Check(string name, StringValues values, IReadOnlyList<ReferenceParameter> known, FaultList faults)
    {
        var names = known.Select(parameter => parameter.Name).ToList();
        if (known.FirstOrDefault(candidate => candidate.Name == name) is not { } parameter)
            faults.AddParameter(Quoted.Text(name).Trim('`'), FaultCode.UnknownParameter, names.Count == 0
                ? $"{Quoted.Text(name)} is not a parameter here; there is none."
                : $"{Quoted.Text(name)} is not a parameter here; known are {string.Join(", ", names)}.{NearestName.Question(name, names)}");
        else if (values.Count > 1)
            faults.AddParameter(name, FaultCode.DoubledParameter, $"`{name}` stands more than once.");
        else if (parameter.FaultOf(values[0] ?? "") is { } fault)
            faults.AddParameter(name, fault.Code, fault.Detail);
    }
}
