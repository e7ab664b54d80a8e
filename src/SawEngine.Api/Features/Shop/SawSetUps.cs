using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Api.Features.Shop;

/// <summary>What a saw is set up for and how long changes take, from wire to trade; the rules have passed.</summary>
internal static class SawSetUps
{
    /// <summary>A saw with its state at the start of the plan, the blades on its shelf and the times of its changes.</summary>
    /// <param name="saw">The saw with its mounted blade and its usual set-up times.</param>
    /// <param name="json">The same as the request has it.</param>
    /// <param name="sectionOf">What a section is called in the plan's jobs.</param>
    public static ScheduleSaw WithSetUps(this ScheduleSaw saw, SawJson json, Func<string, string> sectionOf) => saw with
    {
        InitialState = saw.InitialState with
        {
            Section = json.InitialSection is { } section ? sectionOf(section) : null,
            GradeGroup = json.InitialGradeGroup,
            Angle = json.InitialAngleDegrees is { } degrees ? AngleText.Of(degrees) : null,
        },
        SetUpTimes = saw.SetUpTimes with
        {
            SectionChanges = Changes(json, SetUpChangeKind.Section, sectionOf),
            GradeGroupChanges = Changes(json, SetUpChangeKind.GradeGroup, group => group),
            AngleChanges = Changes(json, SetUpChangeKind.Angle, angle => AngleText.Of(AngleText.Read(angle)!.Value)),
            Beside = [.. json.SetUpBeside.Order().Select(WireEnum.Text)],
        },
        Shelf =
        [
            .. json.Shelf.OrderBy(blade => blade.BladeId, StringComparer.Ordinal).ThenBy(blade => blade.RemainingLife)
                .Select(blade => new ShelfBlade(blade.BladeId, (long)decimal.Floor(blade.RemainingLife * ScheduleSaw.FullBladeLife))),
        ],
    };

    private static SetUpChanges? Changes(SawJson saw, SetUpChangeKind kind, Func<string, string> nameOf)
    {
        List<SetUpChange> pairs =
        [
            .. saw.SetUpChanges.Where(change => change.Kind == kind)
                .Select(change => new SetUpChange(change.From is { } from ? nameOf(from) : null, nameOf(change.To), (long)decimal.Ceiling(change.Seconds)))
                .OrderBy(change => change.From, StringComparer.Ordinal).ThenBy(change => change.To, StringComparer.Ordinal),
        ];
        return pairs.Count > 0 ? new(pairs) : null;
    }
}
