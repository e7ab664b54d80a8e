using System.Linq.Expressions;
using FluentValidation;
using FluentValidation.Results;

namespace SawEngine.Api.Wire.Rules;

/// <summary>Short forms for the rules that bounds on single members cannot state.</summary>
public static class RuleExtensions
{
    /// <summary>The code and the message of a rule.</summary>
    public static IRuleBuilderOptions<T, TProperty> WithFault<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, string code, string detail) =>
        rule.WithErrorCode(code).WithMessage(Escaped(detail));

    /// <summary>A fault at a member below the value that is validated, such as <c>Pieces[3].Length</c>; at the value itself where the path is empty.</summary>
    public static void Fault<T>(this ValidationContext<T> context, string path, string code, string detail) =>
        context.AddFailure(new ValidationFailure(Joined(context.PropertyPath, path), detail) { ErrorCode = code });

    /// <summary>No two items of a list have the same id.</summary>
    public static void Unique<T, TItem>(
        this AbstractValidator<T> rules, Expression<Func<T, IReadOnlyList<TItem>?>> list, Func<TItem, string> id, string idName) =>
        rules.RuleFor(list).Custom((items, context) =>
        {
            var first = new Dictionary<string, int>(StringComparer.Ordinal);
            for (var i = 0; i < (items?.Count ?? 0); i++)
            {
                if (!first.TryAdd(id(items![i]), i))
                    context.Fault($"[{i}].{idName}", FaultCode.DuplicateId, $"{Quoted.Text(id(items[i]))} is already the id of item {first[id(items[i])]}.");
            }
        });

    /// <summary>Either all items of a list state a cost, or none does.</summary>
    public static void CostOnAllOrNone<T, TItem>(
        this AbstractValidator<T> rules, Expression<Func<T, IReadOnlyList<TItem>?>> list, Func<TItem, decimal?> cost) =>
        rules.RuleFor(list).Custom((items, context) =>
        {
            var costed = items?.Count(item => cost(item) is not null) ?? 0;
            if (costed == 0 || costed == items!.Count)
                return;
            for (var i = 0; i < items.Count; i++)
            {
                if (cost(items[i]) is null)
                    context.Fault($"[{i}]", FaultCode.CostOnAllOrNone, $"`cost` is missing here, but stated on {costed} of {items.Count} items: all or none.");
            }
        });

    private static string Joined(string parent, string path) =>
        parent.Length == 0 ? path : path.Length == 0 || path[0] == '[' ? parent + path : parent + "." + path;

    /// <summary>Braces would be read as placeholders.</summary>
    private static string Escaped(string detail) => detail.Replace('{', '(').Replace('}', ')');
}
