using SawEngine.Api.Features.Stock;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.Nests;

/// <summary>What the pieces and the stock of a request are of: the section and grade that they state, or the only one that is stated anywhere.</summary>
internal sealed class NestMaterials
{
    private readonly NestMaterial _only;
    private readonly NestMaterial _onlyAsWritten;

    public NestMaterials(NestProblemRequest request)
    {
        Known = new([], [], new(request.LengthUnit));
        var sections = Distinct(request.Pieces.Select(piece => piece.Section).Concat(request.Stock.Select(item => item.Section)));
        var grades = Distinct(request.Pieces.SelectMany(piece => piece.Substitutes.Prepend(piece.Grade)).Concat(request.Stock.Select(item => item.Grade)));
        (Sections, Grades) = (Distinct(sections.Select(Section)), Distinct(grades.Select(Grade)));
        _only = new(Only(Sections), Only(Grades));
        _onlyAsWritten = new(_only.Section is null ? null : sections[0], _only.Grade is null ? null : grades[0]);
    }

    /// <summary>What designations stand for, as in a plan.</summary>
    public Materials Known { get; }

    /// <summary>The sections that are stated, in ordinal order.</summary>
    public IReadOnlyList<string> Sections { get; }

    /// <summary>The grades that are stated, in ordinal order.</summary>
    public IReadOnlyList<string> Grades { get; }

    public NestMaterial Of(PieceJson piece) => new(Section(piece.Section) ?? _only.Section, Grade(piece.Grade) ?? _only.Grade);

    public NestMaterial Of(NestStockJson item) => new(Section(item.Section) ?? _only.Section, Grade(item.Grade) ?? _only.Grade);

    /// <summary>What may be cut in place of a piece's own material.</summary>
    public IEnumerable<NestMaterial> SubstitutesOf(PieceJson piece) => piece.Substitutes.Select(grade => Of(piece) with { Grade = Grade(grade) });

    /// <summary>The same as the request writes it.</summary>
    public NestMaterial AsWritten(PieceJson piece) => new(piece.Section ?? _onlyAsWritten.Section, piece.Grade ?? _onlyAsWritten.Grade);

    /// <summary>The same as the request writes it.</summary>
    public NestMaterial AsWritten(NestStockJson item) => new(item.Section ?? _onlyAsWritten.Section, item.Grade ?? _onlyAsWritten.Grade);

    /// <summary>The section that a text stands for.</summary>
    public string? Section(string? written) => written is null ? null : Known.Section(written)?.Designation ?? written;

    /// <summary>The grade that a text stands for.</summary>
    public string? Grade(string? written) => written is null ? null : Known.Grade(written)?.Designation ?? written;

    /// <summary>The shape of a section; null where the catalog does not know it.</summary>
    public Section? Shape(NestMaterial material) => material.Section is { } section ? Known.Section(section) : null;

    /// <summary>Kilograms of a meter; null where the catalog does not know the section or the grade.</summary>
    public decimal? KilogramsPerMeter(NestMaterial material) =>
        Shape(material) is { } shape && material.Grade is { } grade && Known.Grade(grade) is { } known ? shape.MassPerMeter(known.Density.Value).Kilograms : null;

    private static string[] Distinct(IEnumerable<string?> names) => [.. names.OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static string? Only(IReadOnlyList<string> names) => names is [var only] ? only : null;
}
