namespace SawEngine.Solvers.Nesting;

/// <summary>Equal bars, cut alike, that are being filled or are done.</summary>
/// <param name="Stock">Index of the stock item.</param>
/// <param name="Bars">How many bars.</param>
/// <param name="Last">Their last run of pieces; null where still empty.</param>
/// <param name="Position">Where their last piece ends, in nanometers.</param>
/// <param name="Face">The second face of their last piece.</param>
/// <param name="Lays">The lays in which all their cuts can be made, as bits.</param>
/// <param name="Transfer">What bringing each bar to another plant costs.</param>
internal sealed record OpenBar(int Stock, int Bars, PieceRun? Last, long Position, int Face, int Lays, long Transfer)
{
    public static OpenBar Empty(int stock, int bars) => new(stock, bars, null, 0, 0, NestModel.AnyLay, 0);

    /// <summary>Some of the bars with further pieces on each.</summary>
    public OpenBar With(NestModel model, int typeIndex, int count, int bars)
    {
        var type = model.Types[typeIndex];
        var end = model.EndOf(model.Stock[Stock], Position, Face, type, count, Last is null);
        return new(Stock, bars, new(Last, typeIndex, count), end, type.SecondFace, Lays & type.Lays, Math.Max(Transfer, model.TransferCost(Stock, type)));
    }

    /// <summary>How many pieces of a type fit on each bar.</summary>
    public long Fitting(NestModel model, PieceType type) =>
        model.Serves(Stock, type) && NestModel.Joins(Lays, type)
            ? model.Fitting(model.Stock[Stock], Position, Face, type, Last is null)
            : 0;

    /// <summary>What each bar costs.</summary>
    public long NetCost(NestModel model) => model.NetCost(model.Stock[Stock], Position, Face) + Transfer;
}
