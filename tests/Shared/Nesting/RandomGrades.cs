using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Tests.Nesting;

/// <summary>Gives lines and stock one grade, or several of which lines allow some in place of their own.</summary>
internal sealed class RandomGrades
{
    private static readonly Grade[] All = [Some.Steel("S235JR"), Some.Steel("S275JR"), Some.Steel("S355J2")];

    private readonly Random random;
    private readonly Grade[] grades;

    public RandomGrades(int seed)
    {
        // Numbers of its own: what else is drawn for a seed does not hang on the grades.
        random = new(~seed);
        grades = random.Next(3) == 0 ? All[..random.Next(2, 4)] : All[..1];
    }

    public OrderLine Of(OrderLine line) => line with
    {
        Grade = grades[random.Next(grades.Length)],
        Substitutes = grades.Length == 1 ? [] : [.. grades.Where(_ => random.Next(2) == 0)],
    };

    public StockItem Of(StockItem item) => item with { Grade = grades[random.Next(grades.Length)] };
}
