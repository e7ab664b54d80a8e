namespace SawEngine.Api.Wire;

/// <summary>Codes of what can be wrong with a request; documented in docs/error-codes.md.</summary>
public static class FaultCode
{
    // Shape (400)
    public const string InvalidJson = "invalid_json";
    public const string InvalidUtf8 = "invalid_utf8";
    public const string InvalidGzip = "invalid_gzip";
    public const string TooDeep = "too_deep";
    public const string UnsupportedSchemaVersion = "unsupported_schema_version";
    public const string WrongType = "wrong_type";
    public const string UnknownMember = "unknown_member";
    public const string DoubledMember = "doubled_member";
    public const string MissingMember = "missing_member";
    public const string UnknownValue = "unknown_value";
    public const string NullNotAllowed = "null_not_allowed";
    public const string NotAnInteger = "not_an_integer";
    public const string OutOfRange = "out_of_range";
    public const string TooSmallToRead = "too_small_to_read";
    public const string TooManyDigits = "too_many_digits";
    public const string TooLong = "too_long";
    public const string InvalidCharacter = "invalid_character";
    public const string InvalidDateTime = "invalid_date_time";
    public const string InvalidTime = "invalid_time";

    // Parameters of reference data (400)
    public const string UnknownParameter = "unknown_parameter";
    public const string DoubledParameter = "doubled_parameter";

    // Rules (422)
    public const string MustBePositive = "must_be_positive";
    public const string TooSmall = "too_small";
    public const string TooLarge = "too_large";
    public const string TooFine = "too_fine";
    public const string LengthRequired = "length_required";
    public const string LengthGivenTwice = "length_given_twice";
    public const string InvalidLengthText = "invalid_length_text";
    public const string Empty = "empty";
    public const string TooMany = "too_many";
    public const string TooMuchWork = "too_much_work";
    public const string DuplicateId = "duplicate_id";
    public const string CostOnAllOrNone = "cost_on_all_or_none";
    public const string QuantityRequired = "quantity_required";
    public const string RemnantIsSingle = "remnant_is_single";
    public const string SectionRequired = "section_required";
    public const string GradeRequired = "grade_required";
    public const string UnknownSection = "unknown_section";
    public const string HeatRequired = "heat_required";
    public const string HeatNotUsed = "heat_not_used";
    public const string ZonesOfOneBar = "zones_of_one_bar";
    public const string ZonesNotAscending = "zones_not_ascending";
    public const string ClassesNotAscending = "classes_not_ascending";

    // Rules of orders, stock, shops and plans (422)
    public const string UnknownGrade = "unknown_grade";
    public const string UnknownGroup = "unknown_group";
    public const string LikeGradeOrGroup = "like_grade_or_group";
    public const string ValueRequired = "value_required";
    public const string MiterFacesCross = "miter_faces_cross";
    public const string LeadDaysNotUsed = "lead_days_not_used";
    public const string UnknownBlade = "unknown_blade";
    public const string UnknownSaw = "unknown_saw";
    public const string UnknownCalendar = "unknown_calendar";
    public const string MountedBladeNotListed = "mounted_blade_not_listed";
    public const string MinAboveMax = "min_above_max";
    public const string HoldDownRequired = "hold_down_required";
    public const string KerfBelowThickness = "kerf_below_thickness";
    public const string TeethNotAscending = "teeth_not_ascending";
    public const string RepeatedDay = "repeated_day";
    public const string ShiftEndsBeforeItBegins = "shift_ends_before_it_begins";
    public const string BreakEndsBeforeItBegins = "break_ends_before_it_begins";
    public const string BreakOutsideShift = "break_outside_shift";
    public const string BreaksOverlap = "breaks_overlap";
    public const string ClosureEndsBeforeItBegins = "closure_ends_before_it_begins";
    public const string InvalidRecurrence = "invalid_recurrence";
    public const string RecurrenceTooFrequent = "recurrence_too_frequent";
    public const string NothingChanges = "nothing_changes";
    public const string ChangeGivenTwice = "change_given_twice";
    public const string RepeatedKind = "repeated_kind";
    public const string InvalidAngle = "invalid_angle";
    public const string TeamsOverlap = "teams_overlap";
    public const string DowntimeEndsBeforeItBegins = "downtime_ends_before_it_begins";
    public const string DateOutOfRange = "date_out_of_range";
    public const string UnknownJob = "unknown_job";
    public const string AfterItself = "after_itself";
    public const string FrozenJobsOverlap = "frozen_jobs_overlap";
    public const string SpanEndsBeforeItBegins = "span_ends_before_it_begins";
    public const string StepsDiffer = "steps_differ";
    public const string LoadsRequired = "loads_required";
    public const string MoreLoadsThanSteps = "more_loads_than_steps";
    public const string QuantitiesNotAscending = "quantities_not_ascending";
    public const string InvalidCurrency = "invalid_currency";
    public const string UnknownTimeZone = "unknown_time_zone";
}
