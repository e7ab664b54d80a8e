using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>Reference data that are served as a list and item by item.</summary>
public abstract class ReferenceResource
{
    /// <summary>How many near designations are named for an unknown one.</summary>
    protected const int Suggestions = 3;

    /// <summary>Path of the list, such as <c>/v1/grades</c>; an item's designation follows it.</summary>
    public abstract string Path { get; }

    /// <summary>Tag in the OpenAPI document, and what the items are.</summary>
    public abstract string Tag { get; }

    /// <summary>What an item is, for the ids and texts of the OpenAPI document, such as <c>Grade</c>.</summary>
    public abstract string ItemName { get; }

    /// <summary>What a caller should know.</summary>
    public abstract string Description { get; }

    /// <summary>A designation that there is; the example of the OpenAPI document.</summary>
    public abstract string Example { get; }

    /// <summary>Type of the answer with a list.</summary>
    public abstract Type ListType { get; }

    /// <summary>Type of the answer with one item.</summary>
    public abstract Type ItemType { get; }

    /// <summary>Code of the fault where a designation is unknown.</summary>
    public abstract string UnknownCode { get; }

    /// <summary>Parameters of the list.</summary>
    public IReadOnlyList<ReferenceParameter> ListParameters => field ??= [ReferenceParameter.Designation, Filter, .. UnitParameters];

    /// <summary>Parameters of an item, beside its designation in the path.</summary>
    public IReadOnlyList<ReferenceParameter> UnitParameters => field ??= HasLengths
        ? [new(ReferenceQuery.LengthUnitName, "Unit of every length in the answer; mm where absent.", WireEnum.Texts(typeof(LengthUnit)))]
        : [];

    /// <summary>The parameter that picks items by one of their values.</summary>
    protected abstract ReferenceParameter Filter { get; }

    /// <summary>Whether items have lengths.</summary>
    protected abstract bool HasLengths { get; }

    /// <summary>The answer with the items that were asked for, in their order; null where the designation is unknown.</summary>
    public abstract ReferenceAnswer? List(ReferenceQuery query);

    /// <summary>The answer with one item; null where the designation is unknown.</summary>
    public abstract ReferenceAnswer? Item(string designation, LengthUnit unit);

    /// <summary>The designations that are most like an unknown one.</summary>
    public abstract IReadOnlyList<string> Nearest(string designation);
}
