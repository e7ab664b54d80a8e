using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>Why pieces of a line are left: the first reason that applies.</summary>
internal static class UnplacedReasons
{
    public static string Of(NestProblem problem, OrderLine line)
    {
        var ofMaterial = problem.Stock.Where(item => StockMatch.IsOfMaterial(line, item) && item.Quantity != 0).ToList();
        if (ofMaterial.Count == 0)
            return UnplacedReason.NoStock;
        if (SawFit.ReasonAgainst(line, problem.Rules) is { } reason)
            return reason;
        var certified = ofMaterial.FindAll(item => StockMatch.Suffices(line.Certificate, item.Certificate));
        if (certified.Count == 0)
            return UnplacedReason.NoCertificate;
        var ofHeat = certified.FindAll(item => StockMatch.IsOfHeat(line, item));
        if (ofHeat.Count == 0)
            return UnplacedReason.NoHeat;
        var light = ofHeat.FindAll(item => SawFit.Carries(item, problem.Rules));
        if (light.Count == 0)
            return UnplacedReason.BarTooHeavy;
        if (light.TrueForAll(item => HeatChoice.PiecesPerBar(item, line, problem.Rules) == 0))
            return UnplacedReason.LongerThanEveryBar;
        return line.HeatRule == HeatRule.Single && !HeatChoice.SomeSuffices(problem, line) ? UnplacedReason.NoSingleHeat : UnplacedReason.StockUsedUp;
    }
}
