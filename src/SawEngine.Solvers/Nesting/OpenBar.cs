namespace SawEngine.Solvers.Nesting;

/// <summary>Equal bars, cut alike, that are being filled or are done.</summary>
/// <param name="Stock">Index of the stock item.</param>
/// <param name="Bars">How many bars.</param>
/// <param name="Last">Their last run of pieces; null where still empty.</param>
/// <param name="Position">Where their last piece ends, in nanometers.</param>
/// <param name="Face">The last face of their last piece.</param>
/// <param name="Lays">The lays in which all their cuts can be made, as bits.</param>
/// <param name="Transfer">What bringing each bar to another plant costs.</param>
/// <param name="AsOrdered">Whether no piece is turned.</param>
internal sealed record OpenBar(int Stock, int Bars, PieceRun? Last, long Position, int Face, int Lays, long Transfer, bool AsOrdered)
{
    public static OpenBar Empty(int stock, int bars, bool asOrdered = false) => new(stock, bars, null, 0, 0, NestModel.AnyLay, 0, asOrdered);

    /// <summary>Some of the bars with further pieces on each, which must fit.</summary>
    public OpenBar With(NestModel model, int typeIndex, int count, int bars) =>
        WithIfFitting(model, typeIndex, count, bars) ?? throw new InvalidOperationException("Pieces do not fit.");

    /// <summary>The same; null where the pieces do not fit.</summary>
    public OpenBar? WithIfFitting(NestModel model, int typeIndex, int count, int bars)
    {
        var type = model.Types[typeIndex];
        if (!model.Serves(Stock, type) || model.PlaceOf(model.Stock[Stock], Position, Face, Lays, type, count, Last is null, AsOrdered) is not { } place)
            return null;
        return new(Stock, bars, new(Last, typeIndex, count, place.Way, place.OtherWay), place.End, place.Face, place.Lays, Math.Max(Transfer, model.TransferCost(Stock, type)), AsOrdered);
    }

    /// <summary>How many pieces of a type fit on each bar.</summary>
    public long Fitting(NestModel model, PieceType type) =>
        model.Serves(Stock, type) ? model.Fitting(model.Stock[Stock], Position, Face, Lays, type, Last is null, AsOrdered) : 0;

    /// <summary>What each bar costs.</summary>
    public long NetCost(NestModel model) => model.NetCost(model.Stock[Stock], Position, Face) + Transfer;
}
