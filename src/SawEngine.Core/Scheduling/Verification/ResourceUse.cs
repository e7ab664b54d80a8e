namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Something that needs an operator's hands: a set-up part, a blade change, or a crane load with its crane.</summary>
internal sealed record ResourceUse(ListedJob Listed, long Start, long Finish, string? OperatorId, string? CraneId, bool IsCraneLoad);
