using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.Orders;

/// <summary>How a piece lies on the bar, in answers.</summary>
internal static class PieceTurnText
{
    /// <summary>Half a turn about the vertical: the second end comes first, the top stays on top.</summary>
    public const string EndForEnd = "endForEnd";

    /// <summary>Half a turn about the bar's axis: the first end comes first, the top lies below.</summary>
    public const string Over = "over";

    /// <summary>Half a turn about the horizontal across the bar: the second end comes first, the top lies below.</summary>
    public const string EndForEndOver = "endForEndOver";

    /// <summary>The turn; null where the piece lies as ordered.</summary>
    public static string? Of(PieceTurn turn) => turn switch
    {
        PieceTurn.EndForEnd => EndForEnd,
        PieceTurn.Over => Over,
        PieceTurn.EndForEndOver => EndForEndOver,
        _ => null,
    };
}
