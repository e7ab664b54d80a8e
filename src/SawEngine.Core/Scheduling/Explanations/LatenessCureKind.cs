namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>What would make a late delivery less late.</summary>
public enum LatenessCureKind
{
    /// <summary>Its last job goes ahead of others on its saw, which then wait.</summary>
    Sooner,

    /// <summary>Its last job goes to another saw.</summary>
    OtherSaw,

    /// <summary>Its last job is split in two, on two saws.</summary>
    Split,

    /// <summary>Its saw works longer.</summary>
    Overtime,

    /// <summary>Its material is there at the start of the plan.</summary>
    EarlierMaterial,

    /// <summary>Its saw is not down, nor in maintenance.</summary>
    SawNotDown,
}
