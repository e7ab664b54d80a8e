using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>How bars of one grade for a cutting group lie in the vise of one saw, with which blade and under which rules they are cut.</summary>
internal sealed class SawSetting
{
    private const int AllowedTeeth = 1;

    private readonly Dictionary<EndCut, CutData> cutting;
    private readonly HashSet<PieceRef> holds;
    private readonly int teethRank;
    private readonly Dictionary<(EndCut Face, CutBundle Bundle), CutData?> together = [];

    private SawSetting(Saw saw, CuttingGroup group, Grade grade, BladeChoice choice, IReadOnlyList<EndCut> faces, IEnumerable<OrderLine> lines, CutRules rules)
    {
        Saw = saw;
        Group = group;
        Grade = grade;
        Blade = choice.Blade;
        Lay = choice.Lay;
        teethRank = choice.TeethRank;
        Rules = rules;
        cutting = faces.Zip(choice.Cuts).DistinctBy(pair => WithoutHand(pair.First)).ToDictionary(pair => WithoutHand(pair.First), pair => pair.Second);
        holds = lines.Select(line => line.Ref).ToHashSet();
    }

    public Saw Saw { get; }

    public CuttingGroup Group { get; }

    /// <summary>Grade of the bars.</summary>
    public Grade Grade { get; }

    /// <summary>Names the saw and the grade.</summary>
    public string Key => $"{Saw.SawId}\t{Grade.Designation}";

    public Blade Blade { get; }

    public Lay Lay { get; }

    /// <summary>The saw's rules with this blade.</summary>
    public CutRules Rules { get; }

    /// <summary>
    /// The setting that can cut most of the lines that bars of the grade may serve, of these the one with the better teeth, then the quickest; null with the reason where the saw can cut none.
    /// </summary>
    public static (SawSetting? Setting, string? Refusal) Of(CuttingGroup group, Grade grade, Saw saw, IReadOnlyDictionary<EndCondition, Length> trim)
    {
        var served = group.Lines.Where(line => CuttingGroup.IsServedBy(line, grade)).ToList();
        var lays = BladeChoice.LaysFor(group.Section, FacesOf(served)).ToList();
        var byLay = lays.Select(lay => (Lay: lay, Lines: served.Where(line => Obstacle(saw, group, lay, line) is null).ToList())).ToList();
        var most = byLay.Max(candidate => candidate.Lines.Count);
        if (most == 0)
            return (null, Nearest(lays.SelectMany(lay => served.Select(line => Obstacle(saw, group, lay, line)!))));
        var settings = byLay.Where(candidate => candidate.Lines.Count == most).Select(candidate => Of(group, grade, saw, trim, candidate.Lay, candidate.Lines)).ToList();
        return settings.OfType<SawSetting>().MinBy(setting => (setting.teethRank, setting.cutting[EndCut.Square].CutSeconds)) is { } best
            ? (best, null)
            : (null, UnplacedReason.NoBladeCuts);
    }

    /// <summary>Whether bars of the grade may serve a line, and the saw cuts it.</summary>
    public bool Cuts(OrderLine line) => CuttingGroup.IsServedBy(line, Grade) && Refusal(line) is null;

    /// <summary>Why the saw does not cut a line of the group from bars of the grade; null where it does.</summary>
    public string? Refusal(OrderLine line)
    {
        if (!holds.Contains(line.Ref))
            return Nearest([Obstacle(Saw, Group, Lay, line)!]);
        var geometry = PieceGeometry.Of(line);
        if (geometry.ShortSide < Rules.ShortestPiece || geometry.ShortSide <= Length.Zero)
            return UnplacedReason.PieceTooShort;
        return geometry.Overall > Rules.LongestPiece ? UnplacedReason.PieceTooLong : null;
    }

    /// <summary>Settings of the cut that makes a face; a miter to the other hand, of a turned piece, is cut alike.</summary>
    public CutData CuttingOf(EndCut face) => cutting[WithoutHand(face)];

    /// <summary>The same for bars that are cut together; null where this blade does not cut so many, or wears out within the cut.</summary>
    public CutData? CuttingOf(EndCut face, CutBundle bundle)
    {
        if (bundle.IsSingle)
            return CuttingOf(face);
        var key = (WithoutHand(face), bundle);
        if (!together.TryGetValue(key, out var data))
            together.Add(key, data = CuttingTogether(face, bundle));
        return data;
    }

    /// <summary>The layout at the positions of this saw; null where the verifier does not pass it here.</summary>
    public LaidBar? Laid(BarLayout layout, IReadOnlyList<PlacedPiece> pieces, PlanProblem problem)
    {
        var nestProblem = new NestProblem
        {
            Lines = pieces.Select(piece => piece.Line).DistinctBy(line => line.Ref).ToList(),
            Stock = [layout.Stock],
            Rules = Rules,
            Remnants = problem.Remnants,
            ScrapValueMicrosPerKilogram = problem.ScrapValueMicrosPerKilogram,
        };
        if (LayoutPositions.Lay(layout.Stock, pieces, Rules, LayoutCost.Of(nestProblem)) is not { } laid)
            return null;
        // Under a limit on remnants the nest has said which remainders are kept; a narrower kerf must not make one more.
        if (problem.Remnants?.MostNew is not null && layout.Remainder.Kind == RemainderKind.Scrap)
            laid = laid with { Remainder = LayoutCost.Of(nestProblem).ScrapOf(layout.Stock, laid.Remainder.Length) };
        laid = laid with { Repeat = layout.Repeat };
        return Reaches(laid) && NestVerifier.VerifyLayout(nestProblem, laid).Count == 0 ? new(this, nestProblem, laid) : null;
    }

    /// <summary>All bars of a layout in the bundles that take least time, equally quick ones of fewest bars; singly where none is quicker or the verifier passes none.</summary>
    public BarWork WorkOf(NestProblem problem, BarLayout laid)
    {
        var cuts = SawCut.Of(laid);
        var singly = Timed(laid with { Bundle = CutBundle.Single }, cuts);
        var motions = singly.Bundles[0].Passes.Sum(pass => pass.Time.Index + pass.Time.Clamp + pass.Time.Approach + pass.Time.Swivel);
        var faces = cuts.CountBy(cut => cut.Face).ToList();
        var quickest = LayoutBundles.Of(laid, Rules, Lay).Prepend(CutBundle.Single).Select(bundle => (Bundle: bundle, Seconds: Seconds(bundle)))
            .Where(option => option.Seconds is not null).MinBy(option => (option.Seconds, option.Bundle.Bars, option.Bundle.High)).Bundle;
        return quickest.IsSingle || NestVerifier.VerifyLayout(problem, laid with { Bundle = quickest }).Count > 0 ? singly : Timed(laid with { Bundle = quickest }, cuts);

        // What is not the same for every bundle.
        decimal? Seconds(CutBundle bundle) => bundle.Split(laid.Repeat).Aggregate((decimal?)0m, (sum, part) => sum + part.Times * (motions + CutSeconds(part.Bundle)));

        decimal? CutSeconds(CutBundle bundle) => faces.Aggregate((decimal?)0m, (sum, face) => sum + face.Value * CuttingOf(face.Key, bundle)?.CutSeconds);
    }

    private BarWork Timed(BarLayout laid, IReadOnlyList<SawCut> cuts) =>
        new(laid, laid.Bundle.Split(laid.Repeat).Select(part => Timed(laid, cuts, part.Bundle, part.Times)).ToList());

    /// <summary>Bars of one layout follow one another, so each begins at the angle at which the one before ended.</summary>
    private BundleWork Timed(BarLayout laid, IReadOnlyList<SawCut> cuts, CutBundle bundle, int times)
    {
        var data = cuts.Select(cut => CuttingOf(cut.Face, bundle)).ToList();
        var planned = cuts.Zip(data, (cut, one) => new PlannedCut(cut.Index, one!.CutSeconds, Lay.Of(cut.Face), cut.FreesPiece ? bundle.Bars : 0)).ToList();
        var time = BarTime.Of(Saw, planned, laid.Remainder.Length > Length.Zero, planned.Count == 0 ? EndCut.Square : planned[^1].Face, bundle.Bars);
        var passes = cuts.Zip(time.Cycles, (cut, cycle) => (cut, cycle)).Zip(data, (pass, one) => new PassWork(pass.cut, pass.cycle, one!.BladeLifeBillionths)).ToList();
        var endsWithBar = cuts.Count(cut => cut.FreesPiece) < laid.Cuts.Count;
        var remainder = endsWithBar ? time.Remainder with { Unload = Saw.Times.UnloadSecondsPerPiece * bundle.Bars } : time.Remainder;
        return new(bundle, times, time.Load, passes, remainder);
    }

    /// <summary>The pitch was chosen for one bar; a bundle of solids that it is too fine for is not cut.</summary>
    private CutData? CuttingTogether(EndCut face, CutBundle bundle)
    {
        var lies = Lay.Of(Group.Section);
        var teeth = RankedBlade.Of(Blade, CutProfile.Of(lies, EndCut.Square, bundle, CuttingParameters.Default, Saw.Cant), CuttingParameters.Default).Rank.Class;
        var data = teeth > Math.Max(teethRank, AllowedTeeth) ? null : CuttingDataCalculator.For(lies, Grade, Saw, Blade, Lay.Of(face), bundle).Data;
        return data?.CutsPerBlade == 0 ? null : data;
    }

    /// <summary>Whether the saw swivels and tilts to the faces of turned pieces too, which may have the other hand.</summary>
    private bool Reaches(BarLayout laid) =>
        laid.Cuts.Where(cut => cut.Turn != PieceTurn.None).SelectMany(cut => new[] { cut.StartCut, cut.EndCut })
            .All(face => SawFit.Obstacle(Saw, Lay.Of(Group.Section), Lay.Of(face)) is null);

    private static EndCut WithoutHand(EndCut face) => new(face.HeightAngle.Size, face.WidthAngle.Size);

    private static SawSetting? Of(CuttingGroup group, Grade grade, Saw saw, IReadOnlyDictionary<EndCondition, Length> trim, Lay lay, List<OrderLine> lines)
    {
        var faces = FacesOf(lines);
        var choice = LayChoice.Choose(lay, group.Section, grade, saw, faces, CutBundle.Single, CuttingParameters.Default).Choice;
        return choice is null ? null : new(saw, group, grade, choice, faces, lines, RulesOf(saw, choice.Blade, trim));
    }

    private static CutRules RulesOf(Saw saw, Blade blade, IReadOnlyDictionary<EndCondition, Length> trim) => new()
    {
        Kerf = blade.Kerf,
        Trim = trim,
        Tail = saw.Tail,
        ShortestPiece = saw.ShortestPiece,
        LongestPiece = saw.LongestPiece,
        ThinnestSlice = saw.ThinnestSlice,
        LoadLimit = saw.LoadLimit,
        Capacity = saw.Capacity,
        MiterRange = saw.MiterRange,
        Bundle = saw.Bundle,
    };

    /// <summary>All faces that are cut, the square one of trim and joints first.</summary>
    private static List<EndCut> FacesOf(IEnumerable<OrderLine> lines) =>
        lines.SelectMany(line => new[] { line.FirstEnd, line.SecondEnd }).Prepend(EndCut.Square).Distinct().ToList();

    private static string? Obstacle(Saw saw, CuttingGroup group, Lay lay, OrderLine line)
    {
        var lies = lay.Of(group.Section);
        return SawFit.Obstacle(saw, lies, EndCut.Square)
            ?? SawFit.Obstacle(saw, lies, lay.Of(line.FirstEnd))
            ?? SawFit.Obstacle(saw, lies, lay.Of(line.SecondEnd));
    }

    private static string Nearest(IEnumerable<string> obstacles) =>
        obstacles.Any(obstacle => obstacle != SawFit.Capacity) ? UnplacedReason.NoSawCutsMiter : UnplacedReason.NoSawHoldsSection;
}
