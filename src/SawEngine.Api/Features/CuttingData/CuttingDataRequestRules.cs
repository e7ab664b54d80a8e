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
            .ToDictionary(section => section.SectionId, section => section.Outline?.Count ?? 0, StringComparer.Ordinal);
        var work = request.Cuts.Sum(cut =>
            (cut.SawIds?.Count ?? request.Shop.Saws.Count) * Math.Max(1, corners.GetValueOrDefault(cut.Section) / CornersOfOneCut));
        if (work > CuttingDataLimits.CutsOnSaws)
            context.Fault("", FaultCode.TooMuchWork, $"Cuts times saws may be at most {CuttingDataLimits.CutsOnSaws}, a fifth of a cut for each corner of an outline, but are {work}.");
    }

    private static void CheckReferences(CuttingDataRequest request, ValidationContext<CuttingDataRequest> context)
    {
        var suggestionsLeft = Limits.FaultsReported;
        var saws = request.Shop.Saws.Select(saw => saw.SawId).ToHashSet(StringComparer.Ordinal);
        var blades = BladesOf(request);
        for (var i = 0; i < request.Cuts.Count; i++)
        {
            CheckSaws(request.Cuts[i].SawIds ?? [], $"[{i}].{nameof(WantedCutJson.SawIds)}");
            if (request.Cuts[i].BladeId is { } blade && !blades.Contains(blade))
                context.Fault($"[{i}].{nameof(WantedCutJson.BladeId)}", FaultCode.UnknownBlade, Unknown(blade, "blades", blades.Order(StringComparer.Ordinal)));
        }

        void CheckSaws(IReadOnlyList<string> ids, string path)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            for (var i = 0; i < ids.Count; i++)
            {
                if (!seen.Add(ids[i]))
                    context.Fault($"{path}[{i}]", FaultCode.DuplicateId, $"{Quoted.Text(ids[i])} stands in the list already.");
                else if (!saws.Contains(ids[i]))
                    context.Fault($"{path}[{i}]", FaultCode.UnknownSaw, Unknown(ids[i], "saws", saws.Order(StringComparer.Ordinal)));
            }
        }

        // Only as many suggestions as can be reported: each compares with the whole list.
        string Unknown(string id, string list, IEnumerable<string> known) =>
            $"{Quoted.Text(id)} is none of the shop's {list}.{(suggestionsLeft-- > 0 ? NearestName.Question(id, known) : "")}";
    }

    /// <summary>The shop's own blades, and the usual ones of saws that list none.</summary>
    private static HashSet<string> BladesOf(CuttingDataRequest request)
    {
        var ids = request.Shop.Blades.Select(blade => blade.BladeId).ToHashSet(StringComparer.Ordinal);
        if (request.Cuts.Any(cut => cut.BladeId is not null))
            ids.UnionWith(request.Shop.Saws.Where(saw => saw.BladeIds is null).SelectMany(saw => UsualBladesOf(saw, new(request.LengthUnit))));
        return ids;
    }

    private static IEnumerable<string> UsualBladesOf(SawJson saw, LengthScale scale)
    {
        var capacity = saw.Capacity;
        return scale.CanRead(capacity.Round) && scale.CanRead(capacity.Width) && scale.CanRead(capacity.Height)
            ? SawMapping.DefaultBladesOf(new(scale.Read(capacity.Round), scale.Read(capacity.Width), scale.Read(capacity.Height))).Select(blade => blade.BladeId)
            : [];
    }
}
