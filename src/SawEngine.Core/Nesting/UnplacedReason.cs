namespace SawEngine.Core.Nesting;

/// <summary>Why pieces are not in the plan: stable snake_case codes.</summary>
public static class UnplacedReason
{
    /// <summary>No stock of the section and grade, or of a substitute, is offered.</summary>
    public const string NoStock = "no_stock_of_section_and_grade";

    /// <summary>Stock is there, but all of it is owned by other customers.</summary>
    public const string OtherOwner = "stock_of_other_owner";

    /// <summary>Stock is there, but all of it lies in other plants, and it is not said what bringing it costs.</summary>
    public const string OtherPlant = "stock_in_other_plant";

    /// <summary>Stock is there, but all of it is reserved for others.</summary>
    public const string Reserved = "stock_reserved";

    /// <summary>Stock is there, but none with a certificate as high as ordered.</summary>
    public const string NoCertificate = "no_stock_with_certificate";

    /// <summary>Stock is there, but none of the heat asked for, or none whose heat is known.</summary>
    public const string NoHeat = "no_stock_of_heat";

    /// <summary>The piece with trim, kerf and tail is longer than every bar.</summary>
    public const string LongerThanEveryBar = "longer_than_every_bar";

    /// <summary>All bars that could give the piece are used up.</summary>
    public const string StockUsedUp = "stock_used_up";

    /// <summary>Bars that could give the piece are used up, some of them by lines of higher priority.</summary>
    public const string HigherPriority = "stock_used_by_higher_priority";

    /// <summary>Stock is short, but by no more pieces than the line accepts to be under.</summary>
    public const string UnderAccepted = "under_quantity_accepted";

    /// <summary>No one heat has enough stock for all pieces of the line.</summary>
    public const string NoSingleHeat = "no_single_heat_suffices";

    /// <summary>No saw is large enough for the section.</summary>
    public const string NoSawHoldsSection = "no_saw_holds_section";

    /// <summary>No saw that holds the section swivels to the miter.</summary>
    public const string NoSawCutsMiter = "no_saw_cuts_miter";

    /// <summary>No saw may cut a piece so short.</summary>
    public const string PieceTooShort = "piece_too_short";

    /// <summary>No saw's outfeed takes a piece so long.</summary>
    public const string PieceTooLong = "piece_too_long";

    /// <summary>Every bar of the stock is heavier than the saws' bar feeds carry.</summary>
    public const string BarTooHeavy = "bar_too_heavy";

    /// <summary>No blade of any saw that holds the section can cut it.</summary>
    public const string NoBladeCuts = "no_blade_cuts_section";

    /// <summary>The verifier refused the layout; it is withheld.</summary>
    public const string NotVerified = "not_verified";
}
