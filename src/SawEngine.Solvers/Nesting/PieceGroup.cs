namespace SawEngine.Solvers.Nesting;

/// <summary>Pieces that are cut from the same stock, by what a bar needs to know of them: their distinct faces, and the least that one takes.</summary>
internal sealed class PieceGroup
{
    private readonly NestModel _model;
    private readonly int[] _firstFaces;
    private readonly int[] _secondFaces;
    private readonly int[] _faces;
    private readonly Dictionary<int, long> _largestGaps = [];
    private readonly Dictionary<int, (long Before, long Behind)> _ends = [];
    private readonly Dictionary<int, long> _safeEnds = [];

    public PieceGroup(NestModel model, IEnumerable<PieceType> types)
    {
        _model = model;
        Types = [.. types];
        _firstFaces = [.. Types.Select(type => type.FirstFace).Distinct()];
        _secondFaces = [.. Types.Select(type => type.SecondFace).Distinct()];
        _faces = [.. _firstFaces.Union(_secondFaces)];
        LeastSize = Types.Min(model.SizeOf);
        LeastLastKerf = model.LeastLastKerf(_faces);
    }

    public IReadOnlyList<PieceType> Types { get; }

    /// <summary>The smallest size of any piece.</summary>
    public long LeastSize { get; }

    /// <summary>Twice the least that the last kerf takes behind the half gap of a face.</summary>
    public long LeastLastKerf { get; }

    /// <summary>Twice the least that lies before the half gap of a first face on a bar of some class, and behind that of a last one.</summary>
    public (long Before, long Behind) EndsOn(int stockClass) => Known(_ends, stockClass, () => _model.LeastEnds(stockClass, _faces));

    /// <summary>What is lost at both ends of a bar of some class at most, where each piece is as long as its safe size.</summary>
    public long SafeEndsOn(int stockClass) => Known(_safeEnds, stockClass, () =>
        _firstFaces.Max(first => _model.Lead(stockClass, first)) + _secondFaces.Max(last => _model.EndNeed(stockClass, last) - LargestGapBehind(last)));

    /// <summary>The most that a piece of a type takes of a bar, whichever of the pieces follows it.</summary>
    public long SafeSizeOf(PieceType type) => type.Overall + LargestGapBehind(type.SecondFace);

    /// <summary>What is lost behind a face at most, whichever of the pieces follows it.</summary>
    private long LargestGapBehind(int face) => Known(_largestGaps, face, () => _firstFaces.Max(next => _model.Gap(face, next)));

    private static T Known<T>(Dictionary<int, T> known, int key, Func<T> find)
    {
        if (!known.TryGetValue(key, out var value))
            known.Add(key, value = find());
        return value;
    }
}
