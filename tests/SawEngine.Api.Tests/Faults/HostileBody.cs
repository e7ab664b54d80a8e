namespace SawEngine.Api.Tests.Faults;

/// <summary>A body as it is sent.</summary>
/// <param name="Bytes">The body before packing.</param>
/// <param name="ContentType">Its media type; none is sent where null.</param>
/// <param name="ContentEncoding">Its coding; none is sent where null.</param>
/// <param name="Sent">The bytes that go out.</param>
internal sealed record HostileBody(byte[] Bytes, string? ContentType, string? ContentEncoding, byte[] Sent);
