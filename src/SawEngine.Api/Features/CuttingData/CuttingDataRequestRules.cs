using FluentValidation;
using FluentValidation.Results;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>Rules of a request for cutting data that bounds on its members cannot state.</summary>
public sealed class CuttingDataRequestRules : AbstractValidator<CuttingDataRequest>
{
    private const int CornersOfOneCut = 5;
    private const int UsualBlades = 10;

    public CuttingDataRequestRules()
    {
        this.Unique(request => request.Cuts, cut => cut.CutId, nameof(WantedCutJson.CutId));
        this.Unique(request => request.Sections, section => section.SectionId, nameof(SectionJson.SectionId));
        this.Unique(request => request.Grades, grade => grade.GradeId, nameof(GradeJson.GradeId));
        RuleFor(request => request.Cuts).Custom((cuts, context) => CheckWork(context.InstanceToValidate, context));
        RuleForEach(request => request.Cuts).ChildRules(cut =>
        {
            cut.RuleFor(wanted => wanted.Section).IsKnownSection();
            cut.RuleFor(wanted => wanted.Grade).IsKnownGrade();
            cut.RuleFor(wanted => wanted.Piece!).SetValidator(new CutPieceRules()).When(wanted => wanted.Piece is not null);
        });
        RuleFor(request => request.Cuts).Custom((cuts, context) => CheckReferences(context.InstanceToValidate, context));
        RuleForEach(request => request.Sections).SetValidator(new SectionRules());
        RuleForEach(request => request.Grades).SetValidator(new GradeRules());
        RuleFor(request => request.Shop).SetValidator(new ShopRules());
    }

    protected override bool PreValidate(ValidationContext<CuttingDataRequest> context, ValidationResult result)
    {
        var request = context.InstanceToValidate;
        context.SetMaterials(new(request.Sections, request.Grades, new(request.LengthUnit)));
        return true;
    }

    private static void CheckWork(CuttingDataRequest request, ValidationContext<CuttingDataRequest> context)
    {
        var corners = request.Sections.DistinctBy(section => section.SectionId)
            .ToDictionary(section => section.SectionId, section => (section.Outline?.Count ?? 0) + (section.ContactWidths?.Count ?? 0) + (section.ContactWidthsTurned?.Count ?? 0), StringComparer.Ordinal);
        var candidates = request.Shop.Saws.DistinctBy(saw => saw.SawId).ToDictionary(
            saw => saw.SawId, saw => request.CompareBlades ? saw.BladeIds?.Count ?? UsualBlades : 1, StringComparer.Ordinal);
        var work = request.Cuts.Sum(cut =>
            (cut.SawIds?.Sum(id => candidates.GetValueOrDefault(id, 1)) ?? candidates.Values.Sum()) * Math.Max(1, corners.GetValueOrDefault(cut.Section) / CornersOfOneCut));
        if (work > CuttingDataLimits.CutsOnSaws)
            context.Fault("", FaultCode.TooMuchWork, $"Cuts times saws, or saws and blades where those are compared, may be at most {CuttingDataLimits.CutsOnSaws}, a fifth of a cut for each corner of an outline and each contact width, but are {work}.");
    }

    private static void CheckReferences(CuttingDataRequest request, ValidationContext<CuttingDataRequest> context)
    {
        var blades = new BladesOfSaws(request.Shop, new(request.LengthUnit));
        for (var i = 0; i < request.Cuts.Count; i++)
        {
            CheckSaws(request.Cuts[i].SawIds ?? [], $"[{i}].{nameof(WantedCutJson.SawIds)}");
            if (request.Cuts[i].BladeId is { } blade && !blades.Knows(blade))
                context.Fault($"[{i}].{nameof(WantedCutJson.BladeId)}", FaultCode.UnknownBlade, $"{Quoted.Text(blade)} is none of the shop's blades.{blades.NearestBlade(blade)}");
        }

        void CheckSaws(IReadOnlyList<string> ids, string path)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            for (var i = 0; i < ids.Count; i++)
            {
                if (!seen.Add(ids[i]))
                    context.Fault($"{path}[{i}]", FaultCode.DuplicateId, $"{Quoted.Text(ids[i])} stands in the list already.");
                else if (!blades.KnowsSaw(ids[i]))
                    context.Fault($"{path}[{i}]", FaultCode.UnknownSaw, $"{Quoted.Text(ids[i])} is none of the shop's saws.{blades.NearestSaw(ids[i])}");
            }
        }
    }
}
