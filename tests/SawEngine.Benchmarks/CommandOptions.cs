using System.Globalization;

namespace SawEngine.Benchmarks;

/// <summary>Options of a command: <c>--name value value ...</c>.</summary>
internal sealed class CommandOptions
{
    private readonly Dictionary<string, List<string>> _values = new(StringComparer.Ordinal);

    /// <summary>Reads the options; throws <see cref="FormatException"/> where one is not of the names given.</summary>
    public CommandOptions(IEnumerable<string> args, params string[] names)
    {
        List<string>? values = null;
        foreach (var arg in args)
        {
            if (arg.StartsWith("--", StringComparison.Ordinal))
            {
                if (!names.Contains(arg))
                    throw new FormatException($"'{arg}' is not an option; these are: {string.Join(' ', names)}.");
                if (!_values.TryGetValue(arg, out values))
                    _values.Add(arg, values = []);
            }
            else
            {
                (values ?? throw new FormatException($"'{arg}' belongs to no option.")).Add(arg);
            }
        }
    }

    /// <summary>Whether an option is given, with values or without.</summary>
    public bool IsGiven(string name) => _values.ContainsKey(name);

    /// <summary>All values of an option, in order; none where it is not given.</summary>
    public IReadOnlyList<string> All(string name) => _values.TryGetValue(name, out var values) ? values : [];

    /// <summary>The last value of an option, or the usual one.</summary>
    public string Text(string name, string usual) => All(name) is [.., var text] ? text : usual;

    /// <summary>The last value of an option as a number, or the usual one.</summary>
    public double Number(string name, double usual) =>
        All(name) is [.., var text] ? double.Parse(text, CultureInfo.InvariantCulture) : usual;
}
