namespace SawEngine.Solvers.Nesting;

/// <summary>Pieces that are cut from the same stock, by what a bar needs to know of them: their distinct faces, and the least that one takes.</summary>
internal sealed class PieceGroup
{
    private readonly Dictionary<int, long> _largestGap;

    public PieceGroup(NestModel model, IEnumerable<PieceType> types)
    {
        Types = [.. types];
        FirstFaces = [.. Types.Select(type => type.FirstFace).Distinct()];
        SecondFaces = [.. Types.Select(type => type.SecondFace).Distinct()];
        Faces = [.. FirstFaces.Union(SecondFaces)];
        LeastSize = Types.Min(model.SizeOf);
        _largestGap = SecondFaces.ToDictionary(face => face, face => FirstFaces.Max(next => model.Gap(face, next)));
    }

    public IReadOnlyList<PieceType> Types { get; }

    public IReadOnlyList<int> FirstFaces { get; }

    public IReadOnlyList<int> SecondFaces { get; }

    public IReadOnlyList<int> Faces { get; }

    /// <summary>The smallest size of any piece.</summary>
    public long LeastSize { get; }

    /// <summary>What is lost behind a face at most, whichever of the pieces follows it.</summary>
    public long LargestGapBehind(int face) => _largestGap[face];

    /// <summary>The most that a piece of a type takes of a bar, whichever of the pieces follows it.</summary>
    public long SafeSizeOf(PieceType type) => type.Overall + LargestGapBehind(type.SecondFace);
}
