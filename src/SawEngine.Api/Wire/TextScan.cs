namespace SawEngine.Api.Wire;

/// <summary>Takes a text apart from left to right, each character once.</summary>
internal ref struct TextScan(ReadOnlySpan<char> text)
{
    /// <summary>No number is read as a larger one: beyond every limit, and far from an overflow.</summary>
    private const long MostRead = 1_000_000_000;

    private ReadOnlySpan<char> _rest = text;

    public readonly bool IsAtEnd => _rest.IsEmpty;

    /// <summary>A whole number; null where none follows.</summary>
    public long? Number()
    {
        var digits = Digits();
        if (digits.IsEmpty)
            return null;
        var number = 0L;
        foreach (var digit in digits)
            number = Math.Min(number * 10 + (digit - '0'), MostRead);
        return number;
    }

    /// <summary>The ASCII digits that follow.</summary>
    public ReadOnlySpan<char> Digits()
    {
        var end = _rest.IndexOfAnyExceptInRange('0', '9');
        var digits = end < 0 ? _rest : _rest[..end];
        _rest = _rest[digits.Length..];
        return digits;
    }

    /// <summary>Takes a character where it follows.</summary>
    public bool Takes(char character)
    {
        var follows = _rest.StartsWith([character]);
        if (follows)
            _rest = _rest[1..];
        return follows;
    }

    /// <summary>Takes spaces, a hyphen, or both, where a digit comes after them.</summary>
    public bool TakesJoint()
    {
        var after = _rest.TrimStart(' ');
        if (after.StartsWith("-"))
            after = after[1..].TrimStart(' ');
        var follows = after.Length < _rest.Length && !after.IsEmpty && char.IsAsciiDigit(after[0]);
        if (follows)
            _rest = after;
        return follows;
    }

    /// <summary>Takes one of some marks, with spaces before it, where it follows.</summary>
    public bool TakesMark(ReadOnlySpan<string> marks)
    {
        var after = _rest.TrimStart(' ');
        foreach (var mark in marks)
        {
            if (after.StartsWith(mark, StringComparison.Ordinal))
            {
                _rest = after[mark.Length..];
                return true;
            }
        }
        return false;
    }
}
