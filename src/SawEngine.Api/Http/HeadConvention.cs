namespace SawEngine.Api.Http;

/// <summary>Lets every GET answer HEAD too.</summary>
internal static class HeadConvention
{
    private static readonly string[] Methods = [HttpMethods.Get, HttpMethods.Head];

    public static TBuilder WithHead<TBuilder>(this TBuilder builder) where TBuilder : IEndpointConventionBuilder
    {
        builder.Finally(static endpoint =>
        {
            foreach (var methods in endpoint.Metadata.OfType<HttpMethodMetadata>().ToList())
                endpoint.Metadata.Remove(methods);
            endpoint.Metadata.Add(new HttpMethodMetadata(Methods));
        });
        return builder;
    }
}
