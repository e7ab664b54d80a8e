using FluentValidation;
using SawEngine.Api.Features.Shop.Recurrences;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a saw that bounds on its members cannot state.</summary>
public sealed class SawRules : AbstractValidator<SawJson>
{
    public SawRules()
    {
        RuleFor(saw => saw.BladeSpeedMPerMin)
            .Must(speed => speed is null || speed.Min <= speed.Max)
            .WithFault(FaultCode.MinAboveMax, "The slowest blade speed `min` is above the fastest, `max`.");
        RuleFor(saw => saw.LongestPiece)
            .Must((saw, longest) => longest is null || saw.ShortestPiece <= longest)
            .WithFault(FaultCode.MinAboveMax, "The `longestPiece` is shorter than the `shortestPiece`.");
        RuleFor(saw => saw.Bundle!).SetValidator(new BundleCapacityRules()).When(saw => saw.Bundle is not null);
        RuleFor(saw => saw.BladeIds).Custom((listed, context) =>
        {
            var ids = listed ?? [];
            for (var i = 0; i < ids.Count; i++)
            {
                if (ids.Take(i).Contains(ids[i], StringComparer.Ordinal))
                    context.Fault($"[{i}]", FaultCode.DuplicateId, $"{Quoted.Text(ids[i])} stands in the list already.");
            }
        });
        RuleFor(saw => saw.MountedBladeId)
            .Must((saw, mounted) => mounted is null || (saw.BladeIds ?? []).Contains(mounted, StringComparer.Ordinal))
            .WithFault(FaultCode.MountedBladeNotListed, "The mounted blade must be one of the saw's `bladeIds`.");
        RuleFor(saw => saw.Shelf).Custom((shelf, context) =>
        {
            for (var i = 0; i < shelf.Count; i++)
            {
                if (!(context.InstanceToValidate.BladeIds ?? []).Contains(shelf[i].BladeId, StringComparer.Ordinal))
                    context.Fault($"[{i}].{nameof(ShelfBladeJson.BladeId)}", FaultCode.UnknownBlade, $"{Quoted.Text(shelf[i].BladeId)} is none of the saw's `bladeIds`.");
            }
        });
        RuleFor(saw => saw.SetUpChanges).SetValidator(new SetUpChangeRules());
        RuleFor(saw => saw.SetUpBeside)
            .Must(kinds => kinds.Distinct().Count() == kinds.Count)
            .WithFault(FaultCode.RepeatedKind, "Name each part of a set-up once.");
        RuleForEach(saw => saw.Maintenance).SetValidator(new RecurrenceRules());
        RuleFor(saw => saw.Downtimes).Custom((downtimes, context) =>
        {
            for (var i = 0; i < downtimes.Count; i++)
            {
                if (downtimes[i].End <= downtimes[i].Start)
                    context.Fault($"[{i}].End", FaultCode.DowntimeEndsBeforeItBegins, "A downtime ends after it begins.");
            }
        });
    }
}
