using SawEngine.Api.Wire;
using SawEngine.Core.Grades;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary><c>GET /v1/grades</c>.</summary>
public sealed class Grades : ReferenceResource
{
    private static GradeCatalog Catalog => GradeCatalog.Standard;

    public override string Path => "/v1/grades";

    public override string Tag => "Grades";

    public override string ItemName => "Grade";

    public override string Description =>
        "A grade is found by any of its designations, in any case, spaced and hyphenated in any way. A designation of several conditions gives the hardest; the "
        + "others stand in `alternatives`. Each value has its source and how far it can be trusted.";

    public override string Example => "1.4301";

    public override Type ListType => typeof(GradeListResponse);

    public override Type ItemType => typeof(GradeResponse);

    public override string UnknownCode => FaultCode.UnknownGrade;

    protected override ReferenceParameter Filter => new("group", "Grades of this group of materials.", Catalog.Groups, IsFilter: true);

    protected override bool HasLengths => false;

    public override ReferenceAnswer? List(ReferenceQuery query)
    {
        if (query.Designation is not { } designation)
            return new("list " + query.Filter, () => new GradeListResponse { Items = [.. Catalog.Items.Where(IsWanted).Select(GradeItemJson.Of)] });
        return Catalog.Match(designation) is not { } match ? null
            : !IsWanted(match.Grade) ? new("list of none", () => new GradeListResponse { Items = [] })
            : new("list of " + KeyOf(match), () => new GradeListResponse { Items = [Written(match)] });

        bool IsWanted(Grade grade) => query.Filter is null || grade.Group == query.Filter;
    }

    public override ReferenceAnswer? Item(string designation, LengthUnit unit) => Catalog.Match(designation) is { } match
        ? new("item " + KeyOf(match), () => new GradeResponse { Item = Written(match) })
        : null;

    public override IReadOnlyList<string> Nearest(string designation) => Catalog.Nearest(designation, Suggestions);

    private static string KeyOf(GradeMatch match) => string.Join('\n', match.Alternatives.Select(grade => grade.Designation).Prepend(match.Grade.Designation));

    private static GradeItemJson Written(GradeMatch match) => GradeItemJson.Of(match.Grade) with
    {
        Alternatives = match.IsAmbiguous ? [.. match.Alternatives.Select(grade => grade.Designation)] : null,
    };
}
