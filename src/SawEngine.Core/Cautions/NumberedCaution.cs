namespace SawEngine.Core.Cautions;

/// <summary>A caution with its id in the answer.</summary>
/// <param name="CautionId">Its id; what it concerns names it.</param>
/// <param name="Caution">The caution.</param>
public sealed record NumberedCaution(string CautionId, Caution Caution);
