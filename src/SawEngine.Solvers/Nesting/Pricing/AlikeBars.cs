using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>Bars of one length, cost and class, of one or several stock items: to the search they are one.</summary>
internal sealed class AlikeBars
{
    private readonly LayoutCost _cost;
    private readonly BarStock _first;
    private readonly long _shared;

    public AlikeBars(NestModel model, IReadOnlyList<int> stock, PieceGroup served, long pieces, LayoutCost cost)
    {
        _cost = cost;
        _first = model.Stock[stock[0]];
        Stock = stock;
        Available = Math.Min(pieces, stock.Sum(index => (long)model.Stock[index].Available));
        IsLimited = Available < pieces;
        var bound = BoundBar.Of(model, _first, Available, served, cost);
        LeastRoom = bound.Usable;
        _shared = bound.Shared;
        IsCredited = bound.IsCredited;
        IsFixed = bound.IsFixed;
        CostMicros = bound.CostMicros;
        SafeRoom = NestModel.SafeRoom(_first, served);
    }

    /// <summary>Indexes of the stock items, in their order.</summary>
    public IReadOnlyList<int> Stock { get; }

    public int Class => _first.Class;

    /// <summary>Equal for bars on which the same pieces can lie together at the same cost of bringing them to another plant.</summary>
    public (int Class, long? ForeignPlantCostMicros) SetsKey => (Class, _first.Item.ForeignPlantCostMicros);

    public long Available { get; }

    /// <summary>Whether there may be fewer bars than pieces.</summary>
    public bool IsLimited { get; }

    /// <summary>What a bar costs at least before its remainder is credited; one pass of the blade for each piece is left out of account.</summary>
    public long CostMicros { get; }

    /// <summary>Whether every bar costs this, whatever is cut from it.</summary>
    public bool IsFixed { get; }

    /// <summary>Whether any remainder has a value.</summary>
    public bool IsCredited { get; }

    /// <summary>No pieces of a larger total least size lie on one bar; in nanometers.</summary>
    public long LeastRoom { get; }

    /// <summary>Pieces of no larger total safe size fit in any order; in nanometers.</summary>
    public long SafeRoom { get; }

    /// <summary>The most that a remainder can be worth where pieces of some total least size are taken.</summary>
    public long MostCredit(long use) =>
        IsCredited ? _cost.RemainderOf(_first.Item, Length.FromNanometers(Math.Max(0, _shared - use))).ValueMicros : 0;
}
