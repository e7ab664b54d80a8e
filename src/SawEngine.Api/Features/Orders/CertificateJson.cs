using System.Text.Json.Serialization;

namespace SawEngine.Api.Features.Orders;

/// <summary>
/// Inspection document: the types of EN 10204, each serving the lower ones, and the US mill test report, which serves only lines that ask for none or for itself.
/// </summary>
public enum CertificateJson
{
    /// <summary>EN 10204 type 2.1.</summary>
    [JsonStringEnumMemberName("2.1")]
    Type21,

    /// <summary>EN 10204 type 2.2.</summary>
    [JsonStringEnumMemberName("2.2")]
    Type22,

    /// <summary>EN 10204 type 3.1.</summary>
    [JsonStringEnumMemberName("3.1")]
    Type31,

    /// <summary>EN 10204 type 3.2.</summary>
    [JsonStringEnumMemberName("3.2")]
    Type32,

    /// <summary>A mill test report in the US sense.</summary>
    MillTestReport,
}
