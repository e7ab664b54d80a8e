using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules of zones and of the nominal length of a bar, which all stock shares.</summary>
internal static class BarLengthRules
{
    /// <summary>Zones ascend within a single bar.</summary>
    public static void CheckZones<T>(this ValidationContext<T> context, IReadOnlyList<BarZoneJson> zones, int? quantity, bool isRemnant, IStatedLength stated, LengthScale scale)
    {
        if (zones.Count == 0)
            return;
        if (!isRemnant && quantity != 1)
            context.Fault(Zones, FaultCode.ZonesOfOneBar, "Only a single bar has zones: state the bar by itself, with `quantity` 1.");
        var before = 0m;
        for (var i = 0; i < zones.Count; i++)
        {
            if (zones[i].From < before || zones[i].To <= zones[i].From)
                context.Fault($"{Zones}[{i}]", FaultCode.ZonesNotAscending, "A zone ends behind where it begins, and begins no earlier than the one before it ends.");
            before = zones[i].To;
        }
        if (scale.CanRead(stated) && scale.CanRead(before) && scale.Read(before) > scale.Read(stated))
            context.Fault($"{Zones}[{zones.Count - 1}].{nameof(BarZoneJson.To)}", FaultCode.TooLarge, "The zone ends behind the end of the bar.");
    }

    /// <summary>A nominal length is no shorter than the one that is surely there.</summary>
    public static void CheckNominalLength<T>(this ValidationContext<T> context, decimal? nominal, IStatedLength stated, LengthScale scale)
    {
        if (nominal > 0 && scale.CanRead(nominal) && scale.CanRead(stated) && scale.Read(nominal.Value) < scale.Read(stated))
            context.Fault("NominalLength", FaultCode.TooSmall, "Must be at least the length that is surely there.");
    }

    private const string Zones = "Zones";
}
