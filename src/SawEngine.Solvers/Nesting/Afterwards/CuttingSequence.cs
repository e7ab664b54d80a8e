using SawEngine.Core.Nesting;

namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>Puts layouts in the order in which they are cut: that with the fewest order lines open at once, where it is better than the one given. Once canceled, the one given stands.</summary>
internal static class CuttingSequence
{
    public static IReadOnlyList<BarLayout> Of(IReadOnlyList<BarLayout> layouts, AfterwardsEffort effort, CancellationToken cancellation)
    {
        if (cancellation.IsCancellationRequested)
            return layouts;
        var numbers = layouts.SelectMany(layout => layout.Cuts).Select(cut => cut.Piece).Distinct().Order()
            .Select((piece, number) => (piece, number)).ToDictionary(pair => pair.piece, pair => pair.number);
        var order = OpenStacks.Order([.. layouts.Select(layout => layout.Cuts.Select(cut => numbers[cut.Piece]).ToHashSet())], effort.Ordering, cancellation);
        return order.LargestOpen < OpenLines.Most(layouts) ? [.. order.Order.Select(index => layouts[index])] : layouts;
    }
}
