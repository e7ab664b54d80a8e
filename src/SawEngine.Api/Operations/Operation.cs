using SawEngine.Api.Wire;

namespace SawEngine.Api.Operations;

/// <summary>A calculation that HTTP and the command line offer alike: the same body gives the same bytes.</summary>
public abstract class Operation
{
    /// <summary>Verb of the command line, such as <c>nest</c>.</summary>
    public abstract string Verb { get; }

    /// <summary>Stable id in the OpenAPI document, such as <c>calculateNest</c>.</summary>
    public abstract string OperationId { get; }

    /// <summary>Path that it is posted to.</summary>
    public abstract string Path { get; }

    /// <summary>Tag in the OpenAPI document.</summary>
    public abstract string Tag { get; }

    /// <summary>One line that says what it does.</summary>
    public abstract string Summary { get; }

    /// <summary>What a caller should know.</summary>
    public abstract string Description { get; }

    /// <summary>A request that works; stands in the OpenAPI document and is posted by a test.</summary>
    public abstract string Example { get; }

    /// <summary>Further requests that work, by name, beside the example; they stand in the OpenAPI document and are posted by a test, too.</summary>
    public virtual IReadOnlyList<(string Name, string Summary, string Json)> MoreExamples => [];

    /// <summary>Type of the request.</summary>
    public abstract Type RequestType { get; }

    /// <summary>Type of the answer.</summary>
    public abstract Type ResponseType { get; }

    /// <summary>Reads, checks and calculates.</summary>
    public abstract Outcome Run(ReadOnlyMemory<byte> body, Preferences preferences, CancellationToken cancellation);
}
