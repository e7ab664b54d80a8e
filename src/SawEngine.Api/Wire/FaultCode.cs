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

    // Rules (422)
    public const string MustBePositive = "must_be_positive";
    public const string TooSmall = "too_small";
    public const string TooLarge = "too_large";
    public const string TooFine = "too_fine";
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
}
