using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of the changes of a saw that have a time of their own: something changes, angles are angles, and each pair stands once.</summary>
public sealed class SetUpChangeRules : AbstractValidator<IReadOnlyList<SetUpChangeJson>>
{
    public SetUpChangeRules() => RuleFor(changes => changes).Custom((changes, context) =>
    {
        var first = new Dictionary<(SetUpChangeKind, string?, string), int>();
        for (var i = 0; i < changes.Count; i++)
        {
            var change = changes[i];
            if (change.Kind == SetUpChangeKind.Angle && FaultyAngle(change, i, context))
                continue;
            var (from, to) = (NameOf(change, change.From), NameOf(change, change.To)!);
            if (from == to)
                context.Fault($"[{i}].To", FaultCode.NothingChanges, "What is before and after is the same; state a change.");
            else if (!first.TryAdd((change.Kind, from, to), i))
                context.Fault($"[{i}]", FaultCode.ChangeGivenTwice, $"Item {first[(change.Kind, from, to)]} states the same change.");
        }
    });

    private static bool FaultyAngle(SetUpChangeJson change, int index, ValidationContext<IReadOnlyList<SetUpChangeJson>> context)
    {
        (string Member, string? Text)[] angles = [(nameof(change.From), change.From), (nameof(change.To), change.To)];
        var faulty = angles.Where(angle => angle.Text is not null && AngleText.Read(angle.Text) is null).ToList();
        foreach (var (member, text) in faulty)
        {
            context.Fault(
                $"[{index}].{member}",
                FaultCode.InvalidAngle,
                $"{Quoted.Text(text!)} is not an angle in degrees from -{AngleText.MostDegrees} to {AngleText.MostDegrees} with at most three decimals, such as 45 or -22.5.");
        }
        return faulty.Count > 0;
    }

    private static string? NameOf(SetUpChangeJson change, string? text) =>
        text is not null && change.Kind == SetUpChangeKind.Angle ? AngleText.Of(AngleText.Read(text)!.Value) : text;
}
