using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of operators and cranes: what they name is there, each once, and operators are teams.</summary>
internal sealed class AttendanceRules : AbstractValidator<ShopJson>
{
    public AttendanceRules()
    {
        this.Unique(shop => shop.Operators, one => one.OperatorId, nameof(OperatorJson.OperatorId));
        this.Unique(shop => shop.Cranes, crane => crane.CraneId, nameof(CraneJson.CraneId));
        RuleFor(shop => shop.Operators).Custom((operators, context) => CheckSaws(operators.Select(one => one.SawIds), nameof(OperatorJson.SawIds), context));
        RuleFor(shop => shop.Cranes).Custom((cranes, context) => CheckSaws(cranes.Select(crane => crane.SawIds), nameof(CraneJson.SawIds), context));
        RuleFor(shop => shop.Operators).Custom(CheckTeams);
    }

    private static void CheckSaws(IEnumerable<IReadOnlyList<string>?> lists, string member, ValidationContext<ShopJson> context)
    {
        var saws = context.InstanceToValidate.Saws.Select(saw => saw.SawId).ToHashSet(StringComparer.Ordinal);
        foreach (var (i, sawIds) in lists.Index().Where(list => list.Item is not null))
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            for (var j = 0; j < sawIds!.Count; j++)
            {
                if (!saws.Contains(sawIds[j]))
                    context.Fault($"[{i}].{member}[{j}]", FaultCode.UnknownSaw, $"{Quoted.Text(sawIds[j])} is none of the shop's saws.");
                else if (!seen.Add(sawIds[j]))
                    context.Fault($"[{i}].{member}[{j}]", FaultCode.DuplicateId, $"{Quoted.Text(sawIds[j])} stands in the list already.");
            }
        }
    }

    private static void CheckTeams(IReadOnlyList<OperatorJson> operators, ValidationContext<ShopJson> context)
    {
        var all = context.InstanceToValidate.Saws.Select(saw => saw.SawId).ToHashSet(StringComparer.Ordinal);
        var teams = new List<(OperatorJson First, HashSet<string> Saws)>();
        for (var i = 0; i < operators.Count; i++)
        {
            var saws = operators[i].SawIds?.ToHashSet(StringComparer.Ordinal) ?? all;
            if (teams.Exists(team => team.Saws.SetEquals(saws)))
                continue;
            if (teams.Find(team => team.Saws.Overlaps(saws)) is { First: { } other })
                context.Fault($"[{i}]", FaultCode.TeamsOverlap, $"This operator and {Quoted.Text(other.OperatorId)} share some of their saws, but not all: operators have all their saws in common, or none.");
            else
                teams.Add((operators[i], saws));
        }
    }
}
