namespace SawEngine.Api.Tests;

/// <summary>Tests that share the host.</summary>
[CollectionDefinition(Name)]
public sealed class HostCollection : ICollectionFixture<ServiceHost>
{
    public const string Name = "host";
}
