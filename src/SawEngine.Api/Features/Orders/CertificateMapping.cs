using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.Orders;

/// <summary>Certificates between wire and trade.</summary>
internal static class CertificateMapping
{
    /// <summary>The certificate; none where absent.</summary>
    public static Certificate ToCertificate(this CertificateJson? certificate) => certificate switch
    {
        CertificateJson.Type21 => Certificate.Type21,
        CertificateJson.Type22 => Certificate.Type22,
        CertificateJson.Type31 => Certificate.Type31,
        CertificateJson.Type32 => Certificate.Type32,
        CertificateJson.MillTestReport => Certificate.MillTestReport,
        _ => Certificate.None,
    };

    /// <summary>The certificate as it stands in answers; null for none.</summary>
    public static CertificateJson? ToJson(this Certificate certificate) => certificate switch
    {
        Certificate.Type21 => CertificateJson.Type21,
        Certificate.Type22 => CertificateJson.Type22,
        Certificate.Type31 => CertificateJson.Type31,
        Certificate.Type32 => CertificateJson.Type32,
        Certificate.MillTestReport => CertificateJson.MillTestReport,
        _ => null,
    };
}
