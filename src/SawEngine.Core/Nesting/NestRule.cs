namespace SawEngine.Core.Nesting;

/// <summary>The rules that <see cref="NestVerifier"/> checks: stable snake_case codes.</summary>
public static class NestRule
{
    /// <summary>Trim, pieces, kerfs and remainder add up to the bar, exactly.</summary>
    public const string Conservation = "conservation_broken";

    /// <summary>A layout stands for at least one bar.</summary>
    public const string Repeat = "repeat_below_one";

    /// <summary>A layout has at least one piece.</summary>
    public const string EmptyLayout = "layout_empty";

    /// <summary>The trim covers what the end condition needs.</summary>
    public const string Trim = "trim_too_short";

    /// <summary>A raw end that needs trim never becomes a piece's first face.</summary>
    public const string RawStart = "piece_on_raw_start";

    /// <summary>A piece stays clear of a raw far end by its trim.</summary>
    public const string RawEnd = "piece_on_raw_end";

    /// <summary>Pieces lie within the bar.</summary>
    public const string OutsideBar = "piece_outside_bar";

    /// <summary>No piece reaches into a defective or reserved zone of its bar.</summary>
    public const string PieceInZone = "piece_in_zone";

    /// <summary>A reserved zone stays whole, in the remainder.</summary>
    public const string ReservedZone = "reserved_zone_cut";

    /// <summary>Between two parallel faces lies at least the kerf, between others, and before and behind a mitered one, that of each cut, measured along the bar.</summary>
    public const string Kerf = "kerf_too_small";

    /// <summary>No two pieces share material.</summary>
    public const string Overlap = "pieces_overlap";

    /// <summary>Cuts are listed in the order in which they lie along the bar.</summary>
    public const string CutOrder = "cuts_out_of_order";

    /// <summary>A piece has the ordered length, or the middle of its tolerance.</summary>
    public const string PieceLength = "piece_length_wrong";

    /// <summary>Faces have the ordered angles and hands, as the piece is turned.</summary>
    public const string Miter = "miter_wrong";

    /// <summary>A piece is turned only so that its section lies as before.</summary>
    public const string Turn = "turn_not_allowed";

    /// <summary>No slice or wedge is thinner than the saw's thinnest.</summary>
    public const string Slice = "slice_too_thin";

    /// <summary>The remainder is at least the tail, on its short side.</summary>
    public const string Tail = "tail_too_short";

    /// <summary>The remainder is booked as the one physical piece that is left behind the last kerf, by its short side.</summary>
    public const string RemainderLength = "remainder_length_wrong";

    /// <summary>A remainder is a remnant from the shortest kept length up while remnants may be left, else scrap.</summary>
    public const string RemainderKind = "remainder_kind_wrong";

    /// <summary>A remainder is not credited with more than it is worth.</summary>
    public const string RemainderValueHigh = "remainder_value_too_high";

    /// <summary>A remainder is not credited with less than it is worth.</summary>
    public const string RemainderValueLow = "remainder_value_too_low";

    /// <summary>No more remnants are left than the rules allow.</summary>
    public const string TooManyRemnants = "too_many_remnants";

    /// <summary>A piece is cut from its own section.</summary>
    public const string Section = "wrong_section";

    /// <summary>A piece is cut from its own grade and condition, or from a substitute that its line allows.</summary>
    public const string Grade = "wrong_grade";

    /// <summary>A bar that a customer owns serves that customer's lines only.</summary>
    public const string Owner = "bar_of_other_owner";

    /// <summary>A bar in another plant serves a line only where it is said what bringing it costs.</summary>
    public const string Plant = "bar_in_other_plant";

    /// <summary>A reserved bar serves only what it is reserved for.</summary>
    public const string Reserved = "bar_reserved";

    /// <summary>Bringing a bar to another plant is costed where, and only where, a piece is for one.</summary>
    public const string Transfer = "transfer_cost_wrong";

    /// <summary>Bars are of the stock that is offered, unchanged.</summary>
    public const string UnknownStock = "unknown_stock";

    /// <summary>Pieces are of the lines that are ordered.</summary>
    public const string UnknownPiece = "unknown_piece";

    /// <summary>No more bars are used than there are.</summary>
    public const string StockOverused = "stock_overused";

    /// <summary>A remnant is single.</summary>
    public const string RemnantUsedTwice = "remnant_used_twice";

    /// <summary>Pieces placed and unplaced are not more than ordered; where none is unplaced, not more than ordered and accepted over.</summary>
    public const string TooManyPieces = "too_many_pieces";

    /// <summary>Pieces placed and unplaced are not fewer than ordered.</summary>
    public const string PiecesMissing = "pieces_missing";

    /// <summary>The stock's inspection document is at least as high as ordered.</summary>
    public const string Certificate = "certificate_too_low";

    /// <summary>What lost its heat never serves certified work.</summary>
    public const string LostHeat = "lost_heat_on_certified_work";

    /// <summary>A line that wants a single or a named heat is cut from stock whose heat is known.</summary>
    public const string HeatUnknown = "heat_unknown";

    /// <summary>All pieces of a line that wants a single heat are of one heat.</summary>
    public const string HeatsMixed = "heats_mixed";

    /// <summary>A line that names a heat is cut from that heat.</summary>
    public const string NamedHeat = "not_the_named_heat";

    /// <summary>A piece's short side is not below the saw's shortest, and its faces do not cross.</summary>
    public const string ShortestPiece = "piece_too_short";

    /// <summary>A piece is not longer than the outfeed takes.</summary>
    public const string LongestPiece = "piece_too_long";

    /// <summary>The saw holds the section, mitered ones at their greater width.</summary>
    public const string Capacity = "section_too_large";

    /// <summary>Miters are within the saw's swivel.</summary>
    public const string MiterRange = "miter_out_of_range";

    /// <summary>One position of the bar brings all its miters into the plane in which the saw swivels.</summary>
    public const string MiterPlane = "miter_plane_out_of_reach";

    /// <summary>A bar is not heavier than the bar feed carries.</summary>
    public const string LoadLimit = "bar_too_heavy";

    /// <summary>A cut bundle is at least one bar wide and high, its rows full, and holds no more bars than are cut alike.</summary>
    public const string BundleSize = "bundle_size_wrong";

    /// <summary>No more bars are clamped side by side or on top of one another than the saw clamps, and the bundle is within its width and height.</summary>
    public const string BundleTooLarge = "bundle_too_large";

    /// <summary>A cut bundle is not heavier than the bar feed carries.</summary>
    public const string BundleTooHeavy = "bundle_too_heavy";

    /// <summary>Bars on top of one another, and bars that roll or slip, are cut together only under a hold-down.</summary>
    public const string BundleHoldDown = "bundle_without_hold_down";

    /// <summary>Only sections that bundle safely are cut in bundles.</summary>
    public const string BundleSection = "bundle_of_unsafe_section";

    /// <summary>Mitered bars are cut side by side only where all faces are alike and the end is long enough for all of them; others one bar wide.</summary>
    public const string BundleMiter = "bundle_miters_differ";

    /// <summary>Bars whose heats are not known are not cut together where they are certified: nobody could say which piece is of which.</summary>
    public const string BundleHeats = "bundle_mixes_heats";

    /// <summary>The value of a nest is the sum of its bars' costs, of pulling and of cutting them, less the value of their remainders.</summary>
    public const string Value = "value_wrong";

    /// <summary>A bound is not above the value.</summary>
    public const string Bound = "bound_above_value";

    /// <summary>Reasons are those of the published list.</summary>
    public const string UnplacedReason = "unplaced_reason_unknown";

    /// <summary>No piece is left while one that is alike in all but its lower priority is placed.</summary>
    public const string Priority = "priority_inverted";

    /// <summary>Unplaced pieces are accepted where, and only where, they are no more than the line accepts to be under.</summary>
    public const string UnderQuantity = "under_quantity_wrong";

    /// <summary>Unplaced pieces stand in one row a line, each of at least one piece.</summary>
    public const string UnplacedRow = "unplaced_row_wrong";
}
