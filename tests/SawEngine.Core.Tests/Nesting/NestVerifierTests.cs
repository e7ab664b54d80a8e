using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

/// <summary>A good answer is clean; with one rule broken it is refused for that rule and no other.</summary>
public class NestVerifierTests
{
    private const int Beams = 0;
    private const int Mixed = 1;
    private const int Remnant = 2;

    private static readonly Rectangle Beam = Rectangle.Of("IPE 200", 100, 200, 2848);
    private static readonly Grade S355 = Steel("S355J2");

    private static readonly OrderLine Certified = Beamed("SO-1", "10", 1480, 6) with { Certificate = Certificate.Type31, HeatRule = HeatRule.Single };
    private static readonly OrderLine Mitered = Beamed("SO-1", "20", 2350, 3) with { LengthAt = LengthAt.LongSide, SecondEnd = WidthMiter(30) };
    private static readonly OrderLine Named = Beamed("SO-2", "10", 900, 2) with { HeatRule = HeatRule.Named, Heat = "H1" };
    private static readonly OrderLine Plain = Beamed("SO-2", "20", 700, 4);
    private static readonly OrderLine Centered = Beamed("SO-2", "30", 1000, 1) with { LengthAt = LengthAt.Centerline, FirstEnd = WidthMiter(30), SecondEnd = WidthMiter(30) };
    private static readonly OrderLine Steeper = Centered with { FirstEnd = WidthMiter(45) };
    private static readonly OrderLine Reversed = Centered with { FirstEnd = WidthMiter(-30) };
    private static readonly OrderLine TooLong = Beamed("SO-3", "10", 5900, 2);

    private static readonly StockItem Bars = Beam12("BAR", 2, "H1", Certificate.Type31);
    private static readonly StockItem Lost = Beam12("LOST", 2, null, Certificate.Type31);
    private static readonly StockItem Offcut = Beam12("RM", 1, "H2", Certificate.Type22) with
    {
        Kind = StockKind.Remnant,
        Length = Mm(5230),
        EndCondition = EndCondition.Sawn,
        CostMicros = 98_300_000,
    };

    private static readonly StockItem OtherSection = Lost with { StockId = "SHS", Section = Rectangle.Of("SHS 150", 150, 150, 4320) };
    private static readonly StockItem OtherGrade = Lost with { StockId = "S235", Grade = Steel("S235JR") };

    public static TheoryData<string> Mutants => [.. Mutations.Keys];

    private static Dictionary<string, (string Code, Func<Case, Case> Mutate)> Mutations => new(StringComparer.Ordinal)
    {
        ["A nanometer of kerf too much is booked"] = (NestRule.Conservation, c => c.Layout(Beams, l => l with { KerfTotal = l.KerfTotal + Nm(1) })),
        ["Kerf is booked as trim"] = (NestRule.Conservation, c => c.Layout(Beams, l => l with { Trim = l.Trim + Mm(2), KerfTotal = l.KerfTotal - Mm(2) })),
        ["All pieces lie 5 mm nearer to the raw start"] = (NestRule.Trim, c => c.Layout(Beams, l => Shift(l with { Trim = l.Trim - Mm(5) }, Mm(-5)))),
        ["The first piece starts on the raw end"] = (NestRule.RawStart, c => c.Layout(Beams, l => Shift(l with { Trim = Mm(0) }, Mm(-10)))),
        ["A piece ends within the trim of the raw far end"] = (NestRule.RawEnd, c => AtTheFarEnd(c.Rules(r => r with { Tail = Mm(0) }), Mm(5))),
        ["The first piece starts before the bar"] = (NestRule.OutsideBar, c => c.Layout(Remnant, l => Shift(l, Mm(-1)))),
        ["A piece has a bit of a defective zone"] = (NestRule.PieceInZone, c => c.Stock(Offcut.StockId, item => item with { Zones = [new(Mm(1000), Mm(1001), ZoneKind.Defective)] })),
        ["A piece is cut from a reserved zone"] = (NestRule.PieceInZone, c => c.Stock(Offcut.StockId, item => item with { Zones = [new(Mm(1000), Mm(5230), ZoneKind.Reserved)] })
            .Layout(Remnant, l => l with { Remainder = l.Remainder with { Kind = RemainderKind.Remnant } })),
        ["The last kerf runs into a reserved zone"] = (NestRule.ReservedZone, c => c.Stock(Offcut.StockId, item => item with { Zones = [new(c.Nest.Layouts[Remnant].Cuts[^1].End + Mm(0.1m), Mm(5230), ZoneKind.Reserved)] })
            .Layout(Remnant, l => l with { Remainder = l.Remainder with { Kind = RemainderKind.Remnant } })),
        ["What holds a reserved zone is booked as scrap"] = (NestRule.RemainderKind, c => c.Stock(Offcut.StockId, item => item with { Zones = [new(Mm(5000), Mm(5230), ZoneKind.Reserved)] })),
        ["A kerf is half a millimeter short"] = (NestRule.Kerf, c => c.Cut(Beams, 1, Mm(-0.5m))),
        ["Two pieces overlap"] = (NestRule.Overlap, c => c.Cut(Beams, 1, Mm(-10))),
        ["Two cuts are listed in the wrong order"] = (NestRule.CutOrder, c => c.Layout(Beams, l => l with { Cuts = [l.Cuts[0], l.Cuts[2], l.Cuts[1], .. l.Cuts.Skip(3)] })),
        ["A piece is a millimeter short"] = (NestRule.PieceLength, c => c.Layout(Beams, l => Lengthen(l, 1, Mm(-1)))),
        ["A square piece is a nanometer long"] = (NestRule.PieceLength, c => c.Layout(Mixed, l => Lengthen(l, 5, Nm(1)))),
        ["A piece is cut to its ordered length, not to the middle of its tolerance"] = (NestRule.PieceLength, c => c.Line(Plain.Ref, line => line with { Tolerance = new(Mm(1), Mm(0)) })),
        ["A mitered piece is off the grid"] = (NestRule.PieceLength, c => c.Layout(Mixed, l => Lengthen(l, 6, Nm(100)))),
        ["A mitered piece is booked a grid step too long"] = (NestRule.PieceLength, c => c.Layout(Beams, l => l with { Cuts = [.. l.Cuts.Take(6), l.Cuts[6] with { Centerline = l.Cuts[6].Centerline + Nm(12_700) }], KerfTotal = l.KerfTotal - Nm(12_700) })),
        ["A mitered piece is a grid step short"] = (NestRule.PieceLength, c => c.Layout(Mixed, l => Lengthen(l, 6, Nm(-12_700)))),
        ["A miter has the wrong hand"] = (NestRule.Miter, c => c.Face(Beams, 6, WidthMiter(-30))),
        ["A turned piece has its faces as ordered"] = (NestRule.Miter, c => c.Layout(Beams, l => l with { Cuts = [.. l.Cuts.Take(6), l.Cuts[6] with { Turn = PieceTurn.EndForEnd }] })),
        ["A turned piece has its faces in another turn"] = (NestRule.Miter, c => c.Layout(Remnant, l => l with { Cuts = [l.Cuts[0], l.Cuts[1] with { Turn = PieceTurn.EndForEndOver }] })),
        ["A turn is none"] = (NestRule.Turn, c => c.Layout(Mixed, l => l with { Cuts = [l.Cuts[0] with { Turn = (PieceTurn)9 }, .. l.Cuts.Skip(1)] })),
        ["A piece of an angle is turned"] = (NestRule.Turn, c => c.Turned(Shapes.EqualAngle, PieceTurn.EndForEnd)),
        ["A piece of a channel is turned over"] = (NestRule.Turn, c => c.Turned(Shapes.Channel, PieceTurn.Over)),
        ["A piece of a channel is turned with its open side to the left"] = (NestRule.Turn, c => c.Turned(Shapes.Channel, PieceTurn.EndForEnd)),
        ["A piece of a tee is turned with its flange below"] = (NestRule.Turn, c => c.Turned(Shapes.Tee, PieceTurn.EndForEndOver)),
        ["A miter is a tenth of a degree off"] = (NestRule.Miter, c => c.Face(Beams, 6, WidthMiter(29.9m))),
        ["The wedge between two pieces is too thin"] = (NestRule.Slice, c => c.Layout(Remnant, l => l with { Cuts = [l.Cuts[0], Moved(l.Cuts[1], Mm(-1))], KerfTotal = l.KerfTotal - Mm(1), Remainder = Left(l, Mm(1)) })),
        ["A shared miter has half its kerf"] = (NestRule.Kerf, c => c.Add(Pair(Centered, Centered), Lost, l => Apart(l, Mm(-0.9m)), EndCondition.Sheared)),
        ["Two pieces overlap across a shared miter"] = (NestRule.Overlap, c => c.Add(Pair(Centered, Centered), Lost, l => Apart(l, Mm(-2)), EndCondition.Sheared)),
        ["The slice between two parallel miters is too thin"] = (NestRule.Slice, c => c.Add(Pair(Centered, Centered), Lost, l => Apart(l, Mm(5)), EndCondition.Sheared)),
        ["The wedge between two unlike miters is too thin"] = (NestRule.Slice, c => c.Add(Pair(Centered, Steeper), Lost, l => Apart(l, Mm(-0.1m)), EndCondition.Sheared)),
        ["A kerf is missing between two unlike miters"] = (NestRule.Kerf, c => c.Add(Pair(Centered, Steeper), Lost, l => Apart(l, Mm(-8)), EndCondition.Sheared)),
        ["Two unlike miters overlap at one corner"] = (NestRule.Overlap, c => c.Add(Pair(Centered, Steeper), Lost, l => Apart(l, Mm(-12)), EndCondition.Sheared)),
        ["One cut is to serve two unlike miters"] = (NestRule.Overlap, c => c.Add(Pair(Centered, Reversed), Lost, l => Apart(l, Mm(-57.73m - 8.85m)), EndCondition.Sheared)),
        ["The slice between two square cuts is too thin"] = (NestRule.Slice, c => c.Layout(Mixed, l => l with { Cuts = [l.Cuts[0], .. l.Cuts.Skip(1).Select(cut => Moved(cut, Mm(2)))], KerfTotal = l.KerfTotal + Mm(2), Remainder = Left(l, Mm(-2)) })),
        ["The slice before a mitered first face is too thin"] = (NestRule.Slice, c => c.Add(Centered with { Ref = new("SO-4", "10") }, Lost, l => Shift(l, Mm(-7)), EndCondition.Sawn)),
        ["The kerf before a mitered first face lies outside the bar"] = (NestRule.Kerf, c => c.Add(Centered with { Ref = new("SO-4", "10") }, Lost, l => Shift(l, Mm(-8)), EndCondition.Sawn)),
        ["The tail is a millimeter short"] = (NestRule.Tail, c => c.Rules(r => r with { Tail = c.Nest.Layouts[Remnant].Remainder.Length + Mm(1) })),
        ["A millimeter of the remainder is booked as kerf"] = (NestRule.RemainderLength, c => c.Layout(Beams, l => l with { KerfTotal = l.KerfTotal + Mm(1), Remainder = Left(l, Mm(-1)) })),
        ["A remainder is booked by its centerline"] = (NestRule.RemainderLength, c => c.Layout(Beams, l => l with { KerfTotal = l.KerfTotal - Mm(28.8671m), Remainder = Left(l, Mm(28.8671m)) })),
        ["A remnant is booked as scrap"] = (NestRule.RemainderKind, c => c.Layout(Beams, l => l with { Remainder = l.Remainder with { Kind = RemainderKind.Scrap } })),
        ["Scrap is booked as a remnant"] = (NestRule.RemainderKind, c => c.Layout(Remnant, l => l with { Remainder = l.Remainder with { Kind = RemainderKind.Remnant } })),
        ["A remnant is credited too high"] = (NestRule.RemainderValueHigh, c => c.Layout(Beams, l => l with { Remainder = l.Remainder with { ValueMicros = l.Remainder.ValueMicros + 2 } })),
        ["A remnant is credited too low"] = (NestRule.RemainderValueLow, c => c.Layout(Beams, l => l with { Remainder = l.Remainder with { ValueMicros = l.Remainder.ValueMicros - 2 } })),
        ["Scrap is credited too high"] = (NestRule.RemainderValueHigh, c => c.Layout(Remnant, l => l with { Remainder = l.Remainder with { ValueMicros = l.Remainder.ValueMicros + 2 } })),
        ["A longer remnant is credited with the fraction of the shorter"] = (NestRule.RemainderValueLow, c => c.Remnants(r => r with { Classes = [new(Mm(610), 0.9m)] })),
        ["A remnant is credited without its handling"] = (NestRule.RemainderValueHigh, c => c.Remnants(r => r with { HandlingCostMicros = 1_000_000 })),
        ["More remnants are left than may be"] = (NestRule.TooManyRemnants, c => c.Remnants(r => r with { MostNew = 1 })),
        ["A remnant that may be left is booked as scrap"] = (NestRule.RemainderKind, c => c.Remnants(r => r with { MostNew = 2 }).Layout(Beams, l => l with { Remainder = LayoutCost.Of(c.Problem).ScrapOf(l.Stock, l.Remainder.Length) })),
        ["The value leaves out what pulling costs"] = (NestRule.Value, c => c.Stock(Bars.StockId, item => item with { PullCostMicros = 1 })),
        ["The value leaves out what cutting costs"] = (NestRule.Value, c => c with { Problem = c.Problem with { CostPerCutMicros = 1 } }),
        ["The bar is of another section"] = (NestRule.Section, c => c.Add(Plain with { Ref = new("SO-4", "10") }, OtherSection)),
        ["The bar is of another grade than the line and its substitutes"] = (NestRule.Grade, c => c.Add(Plain with { Ref = new("SO-4", "10"), Substitutes = [Steel("S275JR")] }, OtherGrade)),
        ["Of two lines on a bar one does not allow its grade"] = (NestRule.Grade, c => c.Add(
            [Plain with { Ref = new("SO-4", "10"), Quantity = 1, Substitutes = [OtherGrade.Grade!] }, Plain with { Ref = new("SO-4", "20"), Quantity = 1 }], OtherGrade, layout => layout, OtherGrade.EndCondition)),
        ["A substitute is of another section"] = (NestRule.Section, c => c.Add(Plain with { Ref = new("SO-4", "10"), Substitutes = [S355] }, OtherSection)),
        ["More remnants of one grade are left than may be, beside one of another"] = (NestRule.TooManyRemnants, c => c.OnSubstitute().Remnants(r => r with { MostNew = 1 })),
        ["The bar is of another grade"] = (NestRule.Grade, c => c.Add(Plain with { Ref = new("SO-4", "10") }, OtherGrade)),
        ["The bar is another customer's"] = (NestRule.Owner, c => c.Stock(Offcut.StockId, item => item with { Owner = "C-1" }).Line(Mitered.Ref, line => line with { Owner = "C-2" })),
        ["The bar is in another plant"] = (NestRule.Plant, c => c.Stock(Offcut.StockId, item => item with { Plant = "north" }).Line(Mitered.Ref, line => line with { Plant = "south" })),
        ["The bar is reserved for another order"] = (NestRule.Reserved, c => c.Stock(Offcut.StockId, item => item with { ReservedFor = ["SO-2", "20"] })),
        ["Bringing a bar from another plant is not costed"] = (NestRule.Transfer, c => c.Stock(Offcut.StockId, item => item with { Plant = "north", ForeignPlantCostMicros = 5 }).Line(Mitered.Ref, line => line with { Plant = "south" })),
        ["Bringing a bar is costed though it stays"] = (NestRule.Transfer, c => c.Layout(Remnant, l => l with { TransferCostMicros = 5 })),
        ["The bar is not offered"] = (NestRule.UnknownStock, c => c.Layout(Beams, l => l with { Stock = l.Stock with { StockId = "NONE" } })),
        ["The bar is not as offered"] = (NestRule.UnknownStock, c => c.Layout(Remnant, l => l with { Stock = l.Stock with { Heat = "H1" } })),
        ["A piece is not ordered"] = (NestRule.UnknownPiece, c => c.Layout(Mixed, l => l with { Cuts = [.. l.Cuts.Take(5), l.Cuts[5] with { Piece = new("SO-9", "10") }, .. l.Cuts.Skip(6)] }).Unplaced(Plain.Ref, 1)),
        ["More bars are used than there are"] = (NestRule.StockOverused, c => c.Stock(Bars.StockId, item => item with { Quantity = 1 })),
        ["A remnant is used twice"] = (NestRule.RemnantUsedTwice, c => c.Layout(Remnant, l => l with { Repeat = 2 }).Line(Mitered.Ref, line => line with { Quantity = 5 })),
        ["More pieces are placed than ordered"] = (NestRule.TooManyPieces, c => c.Line(Plain.Ref, line => line with { Quantity = 3 })),
        ["More pieces are placed than may be over"] = (NestRule.TooManyPieces, c => c.Line(Plain.Ref, line => line with { Quantity = 2, Over = 1 })),
        ["Pieces are over and unplaced"] = (NestRule.TooManyPieces, c => c.Line(Plain.Ref, line => line with { Quantity = 4, Over = 1 }).Unplaced(Plain.Ref, 1)),
        ["Fewer pieces are accepted than are missing"] = (NestRule.UnderQuantity, c => c with { Nest = c.Nest with { Unplaced = [new(TooLong.Ref, 2, UnplacedReason.UnderAccepted)] } }),
        ["Pieces that may be under are not accepted"] = (NestRule.UnderQuantity, c => c.Line(TooLong.Ref, line => line with { Under = 2 })),
        ["A piece is neither placed nor unplaced"] = (NestRule.PiecesMissing, c => c.Line(Plain.Ref, line => line with { Quantity = 5 })),
        ["Unplaced pieces are not reported"] = (NestRule.PiecesMissing, c => c with { Nest = c.Nest with { Unplaced = [] } }),
        ["The certificate is too low"] = (NestRule.Certificate, c => c.Line(Plain.Ref, line => line with { Certificate = Certificate.Type32 })),
        ["A type 3.1 stands in for a mill test report"] = (NestRule.Certificate, c => c.Line(Plain.Ref, line => line with { Certificate = Certificate.MillTestReport })),
        ["Certified work is cut from what lost its heat"] = (NestRule.LostHeat, c => c.Add(Plain with { Ref = new("SO-4", "10"), Certificate = Certificate.Type21 }, Lost)),
        ["A single-heat line is cut from what lost its heat"] = (NestRule.HeatUnknown, c => c.Add(Plain with { Ref = new("SO-4", "10"), HeatRule = HeatRule.Single }, Lost)),
        ["A single-heat line is cut from two heats"] = (NestRule.HeatsMixed, c => c.Line(Mitered.Ref, line => line with { HeatRule = HeatRule.Single })),
        ["A line is cut from another heat than it names"] = (NestRule.NamedHeat, c => c.Line(Named.Ref, line => line with { Heat = "H2" })),
        ["A piece is shorter than the saw's shortest"] = (NestRule.ShortestPiece, c => c.Rules(r => r with { ShortestPiece = Mm(701) })),
        ["A short side is shorter than the saw's shortest"] = (NestRule.ShortestPiece, c => c.Add(Mitered with { Ref = new("SO-4", "10"), Length = Mm(750) }, Lost).Rules(r => r with { ShortestPiece = Mm(695) })),
        ["A piece is longer than the outfeed takes"] = (NestRule.LongestPiece, c => c.Rules(r => r with { LongestPiece = Mm(2349) })),
        ["The section is too large"] = (NestRule.Capacity, c => c.Rules(r => r with { Capacity = new(Mm(410), Mm(199), Mm(199)) })),
        ["The section is too large mitered"] = (NestRule.Capacity, c => c.Rules(r => r with { Capacity = new(Mm(410), Mm(115), Mm(410)) })),
        ["A miter is beyond the swivel"] = (NestRule.MiterRange, c => c.Rules(r => r with { MiterRange = new(Angle.FromDegrees(29), Angle.FromDegrees(29)) })),
        ["Two miters of one bar need it to lie in two ways"] = (NestRule.MiterRange, c => c.Add(
            [Mitered with { Ref = new("SO-4", "10"), Quantity = 1 }, Mitered with { Ref = new("SO-4", "20"), SecondEnd = WidthMiter(-30), Quantity = 1 }], Lost, l => l, EndCondition.Sheared)
            .Rules(r => r with { MiterRange = new(Angle.FromDegrees(0), Angle.FromDegrees(30)) })),
        ["The saw does not swivel"] = (NestRule.MiterRange, c => c.Rules(r => r with { MiterRange = null })),
        ["One bar has miters in two planes"] = (NestRule.MiterPlane, c => c.Add(
            [Mitered with { Ref = new("SO-4", "10"), Quantity = 1 }, Mitered with { Ref = new("SO-4", "20"), SecondEnd = HeightMiter(30), Quantity = 1 }], Lost, l => l, EndCondition.Sheared)),
        ["A miter is compound"] = (NestRule.MiterPlane, c => c.Add(Mitered with { Ref = new("SO-4", "10"), SecondEnd = new(Angle.FromDegrees(10), Angle.FromDegrees(30)) }, Lost)),
        ["A bar is too heavy"] = (NestRule.LoadLimit, c => c.Rules(r => r with { LoadLimit = new(268) })),
        ["The value is not the sum"] = (NestRule.Value, c => c with { Nest = c.Nest with { ValueMicros = c.Nest.ValueMicros + 1 } }),
        ["The bound is above the value"] = (NestRule.Bound, c => c with { Nest = c.Nest with { BoundMicros = c.Nest.ValueMicros + 1 } }),
        ["A reason is not on the list"] = (NestRule.UnplacedReason, c => c with { Nest = c.Nest with { Unplaced = [new(TooLong.Ref, 2, "no_idea")] } }),
        ["A line has two unplaced rows"] = (NestRule.UnplacedRow, c => c with { Nest = c.Nest with { Unplaced = [new(TooLong.Ref, 1, UnplacedReason.StockUsedUp), new(TooLong.Ref, 1, UnplacedReason.StockUsedUp)] } }),
        ["A piece is left while an equal one of lower priority is placed"] = (NestRule.Priority, c => c.Line(Plain.Ref, line => line with { Priority = 2 }) is var first
            ? (first with { Problem = first.Problem with { Lines = [.. first.Problem.Lines, Plain with { Ref = new("SO-4", "10"), Quantity = 1, Priority = 1 }] } }).Unplaced(new("SO-4", "10"), 1) : c),
        ["More bars are cut together than are cut alike"] = (NestRule.BundleSize, c => c.Together(CutBundle.Full(4, 2))),
        ["A row of a bundle is short"] = (NestRule.BundleSize, c => c.Together(new(3, 2, 5))),
        ["A bundle of no bars"] = (NestRule.BundleSize, c => c.Together(CutBundle.Full(0, 2))),
        ["Bars are cut together where none are clamped together"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(2, 1)).Rules(r => r with { Bundle = null })),
        ["More bars lie side by side than are clamped"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(3, 1), clamped: b => b with { MostWide = 2 })),
        ["More bars lie on one another than are clamped"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(1, 3), clamped: b => b with { MostHigh = 2 })),
        ["A bundle is wider than the saw's widest"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(3, 1), clamped: b => b with { LargestWidth = Mm(179.9m) })),
        ["A bundle is higher than the saw's highest"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(2, 3), clamped: b => b with { LargestHeight = Mm(179.9m) })),
        ["A bundle is wider than the saw's capacity"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(3, 1)).Rules(r => r with { Capacity = r.Capacity! with { Width = Mm(179) } })),
        ["A mitered bundle is wider than the saw's capacity"] = (NestRule.BundleTooLarge, c => c.Together(CutBundle.Full(3, 1), line: Parallelogram).Rules(r => r with { Capacity = r.Capacity! with { Width = Mm(200) } })),
        ["A bundle is heavier than the bar feed carries"] = (NestRule.BundleTooHeavy, c => c.Together(CutBundle.Full(3, 2)).Rules(r => r with { LoadLimit = new(600) })),
        ["Bars lie on one another without a hold-down"] = (NestRule.BundleHoldDown, c => c.Together(CutBundle.Full(1, 2), clamped: b => b with { HoldDown = false })),
        ["Pipes lie side by side without a hold-down"] = (NestRule.BundleHoldDown, c => c.Together(CutBundle.Full(2, 1), Shapes.Pipe, clamped: b => b with { HoldDown = false })),
        ["Pipes lie on one another"] = (NestRule.BundleSection, c => c.Together(CutBundle.Full(1, 2), Shapes.Pipe)),
        ["Beams lie on one another"] = (NestRule.BundleSection, c => c.Together(CutBundle.Full(1, 2), Shapes.IBeam)),
        ["Angles are cut together"] = (NestRule.BundleSection, c => c.Together(CutBundle.Full(2, 1), Shapes.EqualAngle)),
        ["Trapezoids lie side by side"] = (NestRule.BundleMiter, c => c.Together(CutBundle.Full(2, 1), line: line => Parallelogram(line) with { SecondEnd = WidthMiter(-30) })),
        ["Pieces with one mitered end lie side by side"] = (NestRule.BundleMiter, c => c.Together(CutBundle.Full(2, 2), line: line => line with { SecondEnd = WidthMiter(30) })),
        // 890 - 742.2 - 1.85 = 145.9 mm are left; the tail of 120 mm and a stagger of 60 tan 30° = 34.6 mm would be needed.
        ["The last of staggered bars is not held"] = (NestRule.BundleMiter, c => c.Together(CutBundle.Full(2, 1), line: Parallelogram, stock: item => item with { Length = Mm(890) })),
        ["Certified bars of unknown heats are cut together"] = (NestRule.BundleHeats, c => c.Together(CutBundle.Full(2, 1), stock: item => item with { Certificate = Certificate.Type22 })),
        ["No piece of a line is reported unplaced"] = (NestRule.UnplacedRow, c => c.Unplaced(Plain.Ref, 0)),
        ["A layout stands for no bar"] = (NestRule.Repeat, c => c.Layout(Remnant, l => l with { Repeat = 0 }).Unplaced(Mitered.Ref, 2)),
        ["A layout has no pieces"] = (NestRule.EmptyLayout, c => c.Layout(Remnant, l => l with { Cuts = [], KerfTotal = l.Stock.Length - l.Remainder.Length }).Unplaced(Mitered.Ref, 2)),
    };

    [Fact]
    public void Good_answer_is_clean()
    {
        var good = Good();

        Assert.Empty(NestVerifier.Verify(good.Problem, good.Nest));
        Assert.All(good.Nest.Layouts, layout => Assert.Empty(NestVerifier.VerifyLayout(good.Problem, layout)));
    }

    [Fact]
    public void Pieces_over_and_under_that_are_accepted_are_clean()
    {
        var over = Good().Line(Plain.Ref, line => line with { Quantity = 3, Over = 1 });
        Assert.Empty(NestVerifier.Verify(over.Problem, over.Nest));

        var under = Good().Line(Plain.Ref, line => line with { Quantity = 6, Under = 2 });
        under = under with { Nest = under.Nest with { Unplaced = [.. under.Nest.Unplaced, UnplacedPieces.Of(under.Problem.Lines[3], 2, UnplacedReason.StockUsedUp)] } };
        Assert.Empty(NestVerifier.Verify(under.Problem, under.Nest));
    }

    [Fact]
    public void Bar_of_the_lines_customer_plant_and_order_is_clean()
    {
        var good = Good().Line(Mitered.Ref, line => line with { Owner = "C-1", Plant = "north" });
        var remnant = good.Stock(Offcut.StockId, item => item with { Owner = "C-1", Plant = "north", ReservedFor = ["SO-9", "SO-1"] });
        Assert.Empty(NestVerifier.Verify(remnant.Problem, remnant.Nest));

        var brought = good.Stock(Offcut.StockId, item => item with { Plant = "south", ForeignPlantCostMicros = 5 }).Layout(Remnant, l => l with { TransferCostMicros = 5 });
        Assert.Empty(NestVerifier.Verify(brought.Problem, brought.Nest));
    }

    [Fact]
    public void Passes_of_the_blade_are_counted_as_they_are_costed()
    {
        var good = Good();

        // A trim cut and one pass for each of seven pieces, the last one's own; of the mitered first faces each takes one more.
        Assert.Equal([8, 9, 3], good.Nest.Layouts.Select(layout => LayoutCheck.Passes(layout, good.Problem.Rules.Kerf)));
        Assert.All(good.Nest.Layouts, layout => Assert.Equal(LayoutCheck.Passes(layout, good.Problem.Rules.Kerf), CutCount.Of(layout, good.Problem.Rules.Kerf)));
        Assert.All(good.Nest.Layouts, layout => Assert.Equal(CutCount.Of(layout, good.Problem.Rules.Kerf), SawCut.Of(layout).Count));
    }

    [Fact]
    public void Substitute_that_the_line_allows_is_clean() => Assert.Empty(Verified(Good().OnSubstitute()));

    [Fact]
    public void Remnants_are_limited_by_the_grade_of_their_bars() => Assert.Empty(Verified(Good().OnSubstitute().Remnants(rules => rules with { MostNew = 2 })));

    [Fact]
    public void Lines_that_allow_different_substitutes_are_not_alike()
    {
        var first = Plain with { Ref = new("SO-4", "20"), Quantity = 1, Priority = 1 };

        Assert.Empty(Verified(Good().OnSubstitute().Left(first)));
        Assert.Equal([NestRule.Priority], Verified(Good().OnSubstitute().Left(first with { Substitutes = [OtherGrade.Grade!] })).Select(violation => violation.Code));
    }

    private static IReadOnlyList<Violation> Verified(Case c) => NestVerifier.Verify(c.Problem, c.Nest);

    [Fact]
    public void Cut_bundles_that_keep_the_rules_are_clean()
    {
        Case[] clean =
        [
            Good().Together(CutBundle.Full(3, 2)),
            Good().Together(CutBundle.Full(1, 2), line: line => Parallelogram(line) with { SecondEnd = WidthMiter(-30) }),
            Good().Together(CutBundle.Full(3, 2), line: Parallelogram),
            Good().Together(CutBundle.Full(3, 1), Shapes.Pipe),
            Good().Together(CutBundle.Full(2, 1), Shapes.IBeam, clamped: b => b with { HoldDown = false }),
            Good().Together(CutBundle.Full(2, 2), stock: item => item with { Heat = "H9", Certificate = Certificate.Type31 }),
        ];

        Assert.All(clean, c => Assert.Empty(NestVerifier.Verify(c.Problem, c.Nest)));
    }

    [Fact]
    public void Bundles_that_are_found_are_those_that_the_verifier_passes()
    {
        // All six bars, of every section, mitered in every way, in every bundle up to five wide and four high: both say the same.
        var sections = new[] { Shapes.Tube, Shapes.Pipe, Shapes.IBeam, Shapes.Channel, Shapes.Hexagon, Shapes.Flat, Shapes.EqualAngle, Shapes.Tee };
        Func<OrderLine, OrderLine>[] lines = [line => line, Parallelogram, line => line with { SecondEnd = WidthMiter(20) }, line => line with { FirstEnd = HeightMiter(30), SecondEnd = HeightMiter(30) }];
        var (passed, refused) = (0, 0);
        foreach (var section in sections)
        {
            foreach (var (line, holdDown) in lines.SelectMany(line => new[] { (line, true), (line, false) }))
            {
                var c = Good().Together(CutBundle.Single, section, line, clamped: b => b with { LargestWidth = Mm(260), LargestHeight = Mm(170), HoldDown = holdDown });
                var rules = c.Problem.Rules with { LoadLimit = new(600) };
                var layout = c.Nest.Layouts[^1];
                var found = Core.CuttingData.Lay.All.SelectMany(lay => LayoutBundles.Of(layout, rules, lay)).ToHashSet();
                foreach (var bundle in Enumerable.Range(1, 5).SelectMany(wide => Enumerable.Range(1, 4).Select(high => CutBundle.Full(wide, high))).Where(bundle => bundle.Bars is > 1 and <= 6))
                {
                    var violations = NestVerifier.VerifyLayout(c.Problem with { Rules = rules }, layout with { Bundle = bundle });
                    Assert.True(violations.Count == 0 == found.Contains(bundle), $"{section.Designation}, {layout.Cuts[0].StartCut}, {layout.Cuts[0].EndCut}, {bundle}: {string.Join(", ", violations)}");
                    _ = violations.Count == 0 ? passed++ : refused++;
                }
            }
        }
        Assert.True(passed > 50 && refused > 50, $"{passed} passed, {refused} refused");
    }

    [Theory]
    [MemberData(nameof(Mutants))]
    public void Answer_that_breaks_one_rule_is_refused_for_it(string mutant)
    {
        var (code, mutate) = Mutations[mutant];
        var broken = mutate(Good());

        var violations = NestVerifier.Verify(broken.Problem, broken.Nest);

        Assert.Equal([code], violations.Select(violation => violation.Code).Distinct());
    }

    [Fact]
    public void Every_rule_has_a_mutant()
    {
        var rules = typeof(NestRule).GetFields().Select(field => (string)field.GetValue(null)!).Order(StringComparer.Ordinal);

        Assert.Equal(rules, Mutations.Values.Select(mutation => mutation.Code).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Layouts_by_hand_with_absurd_positions_are_refused_without_an_exception()
    {
        var broken = Good().Layout(Beams, l => l with { Cuts = [l.Cuts[0] with { Start = Nm(long.MinValue), End = Nm(long.MaxValue) }, .. l.Cuts.Skip(1)] });

        Assert.NotEmpty(NestVerifier.Verify(broken.Problem, broken.Nest));
    }

    private static Case Good()
    {
        var problem = new NestProblem
        {
            Lines = [Certified, Mitered, Named, Plain, Centered, TooLong],
            Stock = [Bars, Lost, Offcut, OtherGrade, OtherSection],
            Rules = new()
            {
                Kerf = Mm(1.6m),
                Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10) },
                Tail = Mm(120),
                ShortestPiece = Mm(50),
                LongestPiece = Mm(6000),
                ThinnestSlice = Mm(7),
                LoadLimit = new(4000),
                Capacity = new(Mm(410), Mm(460), Mm(410)),
                MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(60)),
            },
            Remnants = new(Mm(600), 0.8m),
            ScrapValueMicrosPerKilogram = 200_000,
        };
        var nest = new Nest
        {
            Layouts =
            [
                Lay(problem, Bars, [.. Enumerable.Repeat(Certified, 6), Mitered]),
                Lay(problem, Bars, [Named, Named, Plain, Plain, Plain, Plain, Centered]),
                Lay(problem, Offcut, [Mitered, Mitered]),
            ],
            Unplaced = [new(TooLong.Ref, 2, UnplacedReason.StockUsedUp)],
            ValueMicros = 0,
            BoundMicros = 0,
            StoppedBy = StoppedBy.Effort,
        };
        return new Case(problem, nest).Summed();
    }

    private static BarLayout Lay(NestProblem problem, StockItem stock, List<OrderLine> pieces) =>
        LayoutPositions.Lay(stock, pieces, problem.Rules, LayoutCost.Of(problem))!;

    private static OrderLine Beamed(string orderId, string lineId, decimal length, int quantity) =>
        Line(lineId, length, quantity) with { Ref = new(orderId, lineId), Section = Beam, Grade = S355 };

    private static StockItem Beam12(string stockId, int quantity, string? heat, Certificate certificate) =>
        Bar(stockId, 12000, quantity) with
        {
            Section = Beam,
            Grade = S355,
            Heat = heat,
            Certificate = certificate,
            EndCondition = EndCondition.Sheared,
            CostMicros = 282_000_000,
        };

    private static Length Nm(long nanometers) => Length.FromNanometers(nanometers);

    private static Cut Moved(Cut cut, Length by) => cut with { Start = cut.Start + by, End = cut.End + by };

    private static Remainder Left(BarLayout layout, Length more) =>
        new LayoutCost(new(Mm(600), 0.8m), 200_000).RemainderOf(layout.Stock, layout.Remainder.Length + more);

    /// <summary>All pieces moved along the bar; what was lost or trimmed before them goes to the remainder.</summary>
    private static BarLayout Shift(BarLayout layout, Length by)
    {
        var shifted = layout with { Cuts = [.. layout.Cuts.Select(cut => Moved(cut, by))], Remainder = Left(layout, -by) };
        var pieces = shifted.Cuts.Aggregate(Length.Zero, (sum, cut) => sum + cut.Centerline);
        return shifted with { KerfTotal = layout.Stock.Length - shifted.Trim - pieces - shifted.Remainder.Length };
    }

    /// <summary>A piece longer by some length, all behind it moved on.</summary>
    private static BarLayout Lengthen(BarLayout layout, int index, Length by) =>
        layout with
        {
            Cuts = [.. layout.Cuts.Select((cut, i) => i < index ? cut : i == index ? cut with { End = cut.End + by, Centerline = cut.Centerline + by } : Moved(cut, by))],
            Remainder = Left(layout, -by),
        };

    /// <summary>The last piece moved along the bar.</summary>
    private static BarLayout Apart(BarLayout layout, Length by) =>
        layout with { Cuts = [.. layout.Cuts.SkipLast(1), Moved(layout.Cuts[^1], by)], KerfTotal = layout.KerfTotal + by, Remainder = Left(layout, -by) };

    private static List<OrderLine> Pair(OrderLine first, OrderLine second) =>
        [first with { Ref = new("SO-4", "10") }, second with { Ref = new("SO-4", "20") }];

    private static OrderLine Parallelogram(OrderLine line) => line with { FirstEnd = WidthMiter(30), SecondEnd = WidthMiter(30), LengthAt = LengthAt.Centerline };

    private static Case AtTheFarEnd(Case c, Length fromEnd) =>
        c.Add(
            [Plain with { Ref = new("SO-4", "10"), Quantity = 1 }],
            Lost,
            layout => Shift(layout, Mm(12000) - fromEnd - layout.Cuts[0].End),
            EndCondition.Sheared);

    private sealed record Case(NestProblem Problem, Nest Nest)
    {
        public Case Summed()
        {
            var value = Nest.Layouts.Sum(layout => (layout.Stock.CostMicros + layout.TransferCostMicros - layout.Remainder.ValueMicros) * layout.Repeat);
            return this with { Nest = Nest with { ValueMicros = value, BoundMicros = Math.Min(value, Nest.BoundMicros) } };
        }

        public Case Layout(int index, Func<BarLayout, BarLayout> mutate) =>
            (this with { Nest = Nest with { Layouts = [.. Nest.Layouts.Select((layout, i) => i == index ? mutate(layout) : layout)] } }).Summed();

        public Case Cut(int layout, int cut, Length by) =>
            Layout(layout, l => l with { Cuts = [.. l.Cuts.Select((c, i) => i == cut ? Moved(c, by) : c)] });

        public Case Face(int layout, int cut, EndCut second) =>
            Layout(layout, l => l with { Cuts = [.. l.Cuts.Select((c, i) => i == cut ? c with { EndCut = second } : c)] });

        public Case Rules(Func<CutRules, CutRules> mutate) => this with { Problem = Problem with { Rules = mutate(Problem.Rules) } };

        public Case Remnants(Func<RemnantRules, RemnantRules> mutate) => this with { Problem = Problem with { Remnants = mutate(Problem.Remnants!) } };

        public Case Line(PieceRef piece, Func<OrderLine, OrderLine> mutate) =>
            this with { Problem = Problem with { Lines = [.. Problem.Lines.Select(line => line.Ref == piece ? mutate(line) : line)] } };

        public Case Stock(string stockId, Func<StockItem, StockItem> mutate)
        {
            var mutated = mutate(Problem.Stock.Single(item => item.StockId == stockId));
            StockItem Mutated(StockItem item) => item.StockId == stockId ? mutated : item;
            return new(
                Problem with { Stock = [.. Problem.Stock.Select(Mutated)] },
                Nest with { Layouts = [.. Nest.Layouts.Select(layout => layout with { Stock = Mutated(layout.Stock) })] });
        }

        public Case Unplaced(PieceRef piece, int quantity) =>
            this with { Nest = Nest with { Unplaced = [.. Nest.Unplaced, new(piece, quantity, UnplacedReason.StockUsedUp)] } };

        /// <summary>One more bar, of another section, with a square piece that is turned.</summary>
        public Case Turned(Section section, PieceTurn turn)
        {
            var (stock, line) = (Lost with { StockId = "TURNED", Section = section }, Plain with { Ref = new("SO-4", "10"), Section = section });
            return (this with { Problem = Problem with { Stock = [.. Problem.Stock, stock] } })
                .Add(line, stock, layout => layout with { Cuts = [layout.Cuts[0] with { Turn = turn }] }, stock.EndCondition);
        }

        /// <summary>Six more bars, of which some are cut together, each with one piece of a new line; a saw that clamps up to five wide and four high under a hold-down.</summary>
        public Case Together(
            CutBundle bundle, Section? section = null, Func<OrderLine, OrderLine>? line = null, Func<BundleCapacity, BundleCapacity>? clamped = null, Func<StockItem, StockItem>? stock = null)
        {
            var rules = Problem.Rules with { Bundle = (clamped ?? (b => b))(new(5, 4) { HoldDown = true }) };
            var on = (stock ?? (item => item))(Lost with { StockId = "TOGETHER", Section = section ?? Shapes.Tube, Certificate = Certificate.None, Quantity = 6, EndCondition = EndCondition.Sawn });
            var ordered = (line ?? (one => one))(Plain with { Ref = new("SO-4", "10"), Section = on.Section, Quantity = 6 });
            return (this with { Problem = Problem with { Rules = rules, Stock = [.. Problem.Stock, on] } })
                .Add([ordered], on, layout => layout with { Repeat = 6, Bundle = bundle }, on.EndCondition);
        }

        /// <summary>One more bar, of a substitute that the new line on it allows, with a long remnant.</summary>
        public Case OnSubstitute() => Add(Plain with { Ref = new("SO-4", "10"), Length = Mm(750), Substitutes = [OtherGrade.Grade!] }, OtherGrade);

        /// <summary>One more line like the one on a substitute, of which nothing is placed.</summary>
        public Case Left(OrderLine line) => (this with { Problem = Problem with { Lines = [.. Problem.Lines, line with { Length = Mm(750) }] } }).Unplaced(line.Ref, 1);

        /// <summary>One more bar with one piece of a new line.</summary>
        public Case Add(OrderLine line, StockItem stock) => Add(line, stock, layout => layout, stock.EndCondition);

        public Case Add(OrderLine line, StockItem stock, Func<BarLayout, BarLayout> mutate, EndCondition ends) => Add([line with { Quantity = 1 }], stock, mutate, ends);

        public Case Add(List<OrderLine> lines, StockItem stock, Func<BarLayout, BarLayout> mutate, EndCondition ends)
        {
            var on = stock with { EndCondition = ends };
            var with = Stock(stock.StockId, _ => on);
            var layout = mutate(Lay(Problem, on, lines));
            return new Case(
                with.Problem with { Lines = [.. Problem.Lines, .. lines] },
                with.Nest with { Layouts = [.. Nest.Layouts, layout] }).Summed();
        }
    }
}
