using Google.OrTools.LinearSolver;
using SawEngine.Solvers.Nesting.Master;

namespace SawEngine.Solvers.Tests.Nesting.Master;

/// <summary>Linear programs against GLOP, a general-purpose solver.</summary>
public sealed class RevisedSimplexTests
{
    private const double PriceOfMissing = 3;

    [Theory]
    [InlineData(1, 3, 0)]
    [InlineData(2, 8, 2)]
    [InlineData(3, 20, 10)]
    [InlineData(4, 60, 40)]
    public void Values_are_those_of_a_general_solver_as_columns_come_and_right_sides_change(int seed, int covers, int limits)
    {
        var random = new Random(seed);
        for (var problem = 0; problem < 30; problem++)
        {
            var grown = new Grown(random, covers, limits);
            for (var round = 0; round < 6; round++)
            {
                grown.AddColumns(random, 1 + random.Next(2 * covers));
                grown.AssertSolved();
            }
            for (var round = 0; round < 6; round++)
            {
                grown.Change(random);
                grown.AssertSolved();
            }
            grown.AddColumns(random, covers);
            grown.AssertSolved();
        }
    }

    [Fact]
    public void Two_pieces_on_a_bar_cost_half_a_bar_each()
    {
        var simplex = new RevisedSimplex([(true, 3)], PriceOfMissing, new(default));
        simplex.Add(1, [(0, 2)]);
        Assert.True(simplex.Solve());
        Assert.Equal(1.5, simplex.Value, 9);
        Assert.Equal(0.5, simplex.Duals[0], 9);
        Assert.Equal([1.5], simplex.Levels());
    }

    [Fact]
    public void A_limit_leaves_the_rest_to_what_is_dearer()
    {
        var simplex = new RevisedSimplex([(true, 4), (false, 1)], PriceOfMissing, new(default));
        simplex.Add(1, [(0, 2), (1, 1)]);
        simplex.Add(2, [(0, 2)]);
        Assert.True(simplex.Solve());
        Assert.Equal(3, simplex.Value, 9);
        Assert.Equal([1, -1], simplex.Duals.ToArray());
    }

    [Fact]
    public void A_canceled_program_is_not_solved()
    {
        var simplex = new RevisedSimplex([(true, 4)], PriceOfMissing, new(new CancellationToken(canceled: true)));
        simplex.Add(1, [(0, 2)]);
        Assert.False(simplex.Solve());
    }

    /// <summary>A program in both forms.</summary>
    private sealed class Grown
    {
        private readonly List<(bool IsCover, double Right)> _rows;
        private readonly List<(double Cost, (int Row, double Coefficient)[] Coefficients, bool IsAllowed)> _columns = [];
        private readonly RevisedSimplex _simplex;

        public Grown(Random random, int covers, int limits)
        {
            _rows = [.. Enumerable.Range(0, covers + limits).Select(row => (row < covers, (double)random.Next(1, 30)))];
            _simplex = new(_rows, PriceOfMissing, new(default));
        }

        public void AddColumns(Random random, int count)
        {
            for (var i = 0; i < count; i++)
            {
                var coefficients = new SortedDictionary<int, double>();
                for (var row = 0; row < random.Next(1, 6); row++)
                {
                    var at = random.Next(_rows.Count);
                    coefficients[at] = _rows[at].IsCover ? random.Next(1, 5) : 1;
                }
                var column = (0.2 + random.NextDouble(), coefficients.Select(one => (one.Key, one.Value)).ToArray(), true);
                _columns.Add(column);
                _simplex.Add(column.Item1, column.Item2);
            }
        }

        public void Change(Random random)
        {
            for (var row = 0; row < _rows.Count; row++)
            {
                _rows[row] = (_rows[row].IsCover, random.Next((int)_rows[row].Right + 1));
                _simplex.SetRight(row, _rows[row].Right);
            }
            for (var i = 0; i < _columns.Count; i++)
            {
                _columns[i] = _columns[i] with { IsAllowed = random.Next(4) > 0 };
                _simplex.Allow(i, _columns[i].IsAllowed);
            }
        }

        public void AssertSolved()
        {
            Assert.True(_simplex.Solve());
            Assert.Equal(Reference(), _simplex.Value, 6);
            var levels = _simplex.Levels();
            Assert.All(levels.Zip(_columns), pair => Assert.InRange(pair.First, -1e-6, pair.Second.IsAllowed ? 1e9 : 1e-6));
            for (var row = 0; row < _rows.Count; row++)
            {
                var sum = _columns.Select((column, i) => levels[i] * column.Coefficients.Where(one => one.Row == row).Sum(one => one.Coefficient)).Sum();
                Assert.True(_rows[row].IsCover || sum <= _rows[row].Right + 1e-6);
            }
        }

        private double Reference()
        {
            using var solver = Solver.CreateSolver("GLOP");
            var rows = _rows.Select(row => row.IsCover ? solver.MakeConstraint(row.Right, double.PositiveInfinity) : solver.MakeConstraint(double.NegativeInfinity, row.Right)).ToList();
            solver.Objective().SetMinimization();
            foreach (var (cost, coefficients, isAllowed) in _columns)
            {
                var variable = solver.MakeNumVar(0, isAllowed ? double.PositiveInfinity : 0, "");
                solver.Objective().SetCoefficient(variable, cost);
                foreach (var (row, coefficient) in coefficients)
                    rows[row].SetCoefficient(variable, coefficient);
            }
            for (var row = 0; row < rows.Count; row++)
            {
                var missing = solver.MakeNumVar(0, _rows[row].IsCover ? double.PositiveInfinity : 0, "");
                solver.Objective().SetCoefficient(missing, PriceOfMissing);
                rows[row].SetCoefficient(missing, 1);
            }
            Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
            return solver.Objective().Value();
        }
    }
}
