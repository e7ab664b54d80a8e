using SawEngine.Core.Accuracy;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>Which ordered tolerances of length the saws that were chosen do not hold.</summary>
internal sealed class ToleranceStage(PlanProblem problem)
{
    /// <summary>The code of the warning.</summary>
    public const string NotHeld = "tolerance_not_held";

    private readonly ILookup<PieceRef, OrderLine> lines = problem.Orders.SelectMany(order => order.Lines)
        .Where(line => line.Tolerance != default).ToLookup(line => line.Ref);

    /// <summary>The warnings of a job's bars on the saw that cuts them, one for each line.</summary>
    public IEnumerable<Warning> Of(string jobId, Saw saw, IEnumerable<BarWork> bars)
    {
        var strokes = bars.SelectMany(bar => SawCut.Of(bar.Layout)).Where(cut => cut.FreesPiece)
            .GroupBy(cut => cut.Piece!.Value, cut => CutCycle.Strokes(cut.Index, saw.BarFeedStroke));
        foreach (var piece in strokes)
        {
            foreach (var line in lines[piece.Key])
            {
                var accuracy = LengthAccuracy.Of(saw.Accuracy, line.AimedLength, piece.Max(), line.Tolerance);
                if (accuracy.IsHeld == false)
                    yield return new(NotHeld, Text(line, saw, accuracy), jobId, line.Ref.OrderId);
            }
        }
    }

    private static string Text(OrderLine line, Saw saw, LengthAccuracy accuracy)
    {
        var times = decimal.Round(accuracy.Largest.Nanometers / (decimal)Math.Max(accuracy.Ordered!.Value.Nanometers, 1), 2, MidpointRounding.AwayFromZero);
        var cures = string.Join(", ", accuracy.Cures.Select(CureText));
        return FormattableString.Invariant($"Line {line.Ref.LineId}: the error of saw {saw.SawId} after {accuracy.Strokes} strokes may be {times} times what the tolerance allows; what holds it: {cures}.");
    }

    private static string CureText(LengthCure cure) => cure switch
    {
        LengthCure.OneStroke => "one stroke, on a saw with a longer one",
        LengthCure.Calibrate => "setting bias and scale of the bar feed to nil",
        LengthCure.Stop => "cutting against a stop",
        _ => "cutting longer and machining to length",
    };
}
