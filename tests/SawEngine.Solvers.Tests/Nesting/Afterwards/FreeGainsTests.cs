using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Solvers.Nesting;
using SawEngine.Tests.Nesting;
using static SawEngine.Tests.Nesting.Some;

namespace SawEngine.Solvers.Tests.Nesting.Afterwards;

public class FreeGainsTests
{
    [Fact]
    public void Random_nests_gain_at_no_cost_and_never_have_more_layouts()
    {
        var (fewer, gathered) = (0, 0);
        for (var seed = 0; seed < 750; seed++)
        {
            var problem = RandomProblem.Of(seed, mostLines: 12, mostQuantity: 20, mostStock: 8);
            var found = Solve(problem, takesFreeGains: false);

            var nest = Solve(problem, takesFreeGains: true);

            Assert.Empty(NestVerifier.Verify(problem, nest));
            Assert.Equal(found.Unplaced, nest.Unplaced);
            Assert.True(nest.ValueMicros <= found.ValueMicros, $"seed {seed}: {found.ValueMicros} became {nest.ValueMicros}");
            Assert.True(nest.Layouts.Count <= found.Layouts.Count, $"seed {seed}: {found.Layouts.Count} layouts became {nest.Layouts.Count}");
            Assert.Equal(found.BoundMicros, nest.BoundMicros);
            fewer += nest.Layouts.Count < found.Layouts.Count ? 1 : 0;
            gathered += Remnants(nest) < Remnants(found) ? 1 : 0;
        }
        Assert.True(fewer > 20 && gathered > 2, $"{fewer} with fewer layouts, {gathered} with fewer remnants");
    }

    [Fact]
    public void Lines_that_are_equally_urgent_share_bars_alike()
    {
        // Ten bars of three pieces: ten pieces of one line and twenty of the other make one layout, one and two on each.
        var nest = Solve(Thirds(("A", 10), ("B", 20)), takesFreeGains: true);

        var layout = Assert.Single(nest.Layouts);
        Assert.Equal((10, 1, 2), (layout.Repeat, Pieces(layout, "A"), Pieces(layout, "B")));
    }

    [Fact]
    public void Line_that_fills_its_bars_is_cut_alone()
    {
        // Nine pieces fill three bars, twelve another four: no bar need be shared.
        var nest = Solve(Thirds(("A", 12), ("B", 9)), takesFreeGains: true);

        Assert.Equal([(4, 3, 0), (3, 0, 3)], nest.Layouts.Select(layout => (layout.Repeat, Pieces(layout, "A"), Pieces(layout, "B"))));
        Assert.Equal(1, nest.MostOpenLines);
    }

    [Fact]
    public void Urgent_line_is_cut_from_the_first_bars_though_one_layout_would_do()
    {
        var problem = Thirds(("A", 10), ("B", 20));
        problem = problem with { Lines = [problem.Lines[0], problem.Lines[1] with { Priority = 1 }] };

        var nest = Solve(problem, takesFreeGains: true);

        Assert.Equal(7, nest.Layouts.Where(layout => Pieces(layout, "B") > 0).Sum(layout => layout.Repeat));
    }

    private static int Pieces(BarLayout layout, string lineId) => layout.Cuts.Count(cut => cut.Piece == new PieceRef("", lineId));

    private static int Remnants(Nest nest) => nest.Layouts.Sum(layout => layout.Remainder.Kind == RemainderKind.Remnant ? layout.Repeat : 0);

    /// <summary>Pieces of which three fill a bar.</summary>
    private static NestProblem Thirds(params (string LineId, int Quantity)[] lines) => new()
    {
        Lines = [.. lines.Select(line => Line(line.LineId, 1997, line.Quantity))],
        Stock = [Bar("B", 6000, 20)],
        Rules = new() { Kerf = Mm(3) },
    };

    private static Nest Solve(NestProblem problem, bool takesFreeGains) =>
        new ColumnNester { TakesFreeGains = takesFreeGains }.Solve(problem, Effort.Quick, CancellationToken.None);
}
