namespace SawEngine.Core.Cautions;

/// <summary>Cautions, each once, under ids in the order of code and text.</summary>
public sealed class NumberedCautions
{
    private NumberedCautions(IReadOnlyList<NumberedCaution> all) => All = all;

    /// <summary>The cautions, by id.</summary>
    public IReadOnlyList<NumberedCaution> All { get; }

    /// <summary>Numbers cautions; those that are given more than once get one id.</summary>
    public static NumberedCautions Of(IEnumerable<Caution> cautions) => new(cautions.Distinct()
        .OrderBy(caution => caution.Code, StringComparer.Ordinal).ThenBy(caution => caution.Detail, StringComparer.Ordinal)
        .Select((caution, i) => new NumberedCaution($"C{i + 1}", caution))
        .ToList());

    /// <summary>The ids of some of the cautions, in the order of ids.</summary>
    public IReadOnlyList<string> IdsOf(IReadOnlyCollection<Caution> cautions) =>
        All.Where(numbered => cautions.Contains(numbered.Caution)).Select(numbered => numbered.CautionId).ToList();
}
