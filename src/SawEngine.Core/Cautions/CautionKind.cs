namespace SawEngine.Core.Cautions;

/// <summary>A kind of caution, as the catalog lists it.</summary>
/// <param name="Code">The stable snake_case code.</param>
/// <param name="Template">What to heed, with places {0}, {1} for the arguments of a case.</param>
/// <param name="Reference">The regulation or standard that covers it.</param>
/// <param name="Confidence">How far the reference can be trusted.</param>
/// <param name="AttendedOnly">Whether work with this caution may never run unattended.</param>
public sealed record CautionKind(string Code, string Template, string Reference, Confidence Confidence, bool AttendedOnly = false);
