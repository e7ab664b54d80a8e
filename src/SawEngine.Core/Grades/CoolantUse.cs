namespace SawEngine.Core.Grades;

/// <summary>Whether a grade may be cut with coolant.</summary>
public enum CoolantUse
{
    /// <summary>It may.</summary>
    Allowed,

    /// <summary>It is cut dry, whatever the saw has.</summary>
    NotAllowed,
}
