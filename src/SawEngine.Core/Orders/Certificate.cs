namespace SawEngine.Core.Orders;

/// <summary>
/// Inspection document that comes with stock or is ordered with a line. Types 2.1 to 3.2 are those of EN 10204:2004 and are ordered;
/// a mill test report is a US document and stands outside that order: it serves only lines that ask for none or for a mill test report.
/// </summary>
public enum Certificate
{
    /// <summary>None.</summary>
    None,

    /// <summary>EN 10204 type 2.1, declaration of compliance.</summary>
    Type21,

    /// <summary>EN 10204 type 2.2, test report.</summary>
    Type22,

    /// <summary>EN 10204 type 3.1, inspection certificate.</summary>
    Type31,

    /// <summary>EN 10204 type 3.2, inspection certificate countersigned for the purchaser.</summary>
    Type32,

    /// <summary>A mill test report in the US sense.</summary>
    MillTestReport,
}
