using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>A rule of the trade that the edited nest breaks.</summary>
public sealed record NestViolationJson
{
    /// <summary>Where it is in the body sent, as a JSON Pointer fragment.</summary>
    public required string Pointer { get; init; }

    /// <summary>The rule, for a program.</summary>
    [KnownValues(
        NestRule.UnknownStock, NestRule.UnknownPiece, NestRule.Section, NestRule.Grade, NestRule.Owner, NestRule.Plant, NestRule.Reserved, NestRule.Certificate,
        NestRule.LostHeat, NestRule.HeatUnknown, NestRule.NamedHeat, NestRule.HeatsMixed, NestRule.EmptyLayout, NestRule.CutOrder, NestRule.Overlap, NestRule.Kerf,
        NestRule.Slice, NestRule.OutsideBar, NestRule.PieceInZone, NestRule.ReservedZone, NestRule.RawStart, NestRule.RawEnd, NestRule.Trim, NestRule.Tail,
        NestRule.PieceLength, NestRule.Miter, NestRule.Turn, NestRule.ShortestPiece, NestRule.LongestPiece, NestRule.StockOverused, NestRule.RemnantUsedTwice,
        NestRule.TooManyPieces, NestRule.Priority, NestRule.Conservation, NestRule.RemainderLength, NestRule.RemainderKind, NestRule.RemainderValueHigh,
        NestRule.RemainderValueLow, NestRule.TooManyRemnants, NestRule.BundleSize, NestRule.BundleTooLarge, NestRule.BundleHoldDown, NestRule.BundleSection,
        NestRule.BundleMiter, NestRule.BundleHeats)]
    public required string Code { get; init; }

    /// <summary>What breaks it, for a person.</summary>
    public required string Detail { get; init; }
}
