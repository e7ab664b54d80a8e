using SawEngine.Core.Cautions;

namespace SawEngine.Core.Planning;

/// <summary>A caution with its id in the plan.</summary>
/// <param name="CautionId">Its id; jobs name it.</param>
/// <param name="Caution">The caution.</param>
public sealed record PlannedCaution(string CautionId, Caution Caution);
