using Microsoft.Extensions.Logging.Abstractions;
using SawEngine.Api.Http;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Http;

public sealed class CalculationsTests
{
    private static readonly TimeSpan Ever = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan Soon = TimeSpan.FromMilliseconds(50);
    private static readonly Answered Answer = new(default, false, TimeSpan.Zero, []);

    [Fact]
    public async Task Calculation_that_does_not_stop_is_given_up_and_keeps_its_slot_until_it_ends()
    {
        using var released = new ManualResetEventSlim();
        using var calculations = new Calculations(1, 0, Ever, Soon, NullLogger.Instance);

        var givenUp = await calculations.Run(() => Hold(released), CancellationToken.None);
        Assert.Equal(ProblemType.OutOfTime.Type, givenUp.Refusal!.Type);
        Assert.True(calculations.HasRunaways);
        var refused = await calculations.Run(() => Answer, CancellationToken.None);
        Assert.Equal(ProblemType.Busy.Type, refused.Refusal!.Type);

        released.Set();
        while (calculations.HasRunaways)
            await Task.Delay(1);
        var answered = await calculations.Run(() => Answer, CancellationToken.None);
        Assert.Same(Answer, answered.Outcome);
    }

    [Fact]
    public async Task Calculation_that_waits_too_long_is_refused_and_never_started()
    {
        using var released = new ManualResetEventSlim();
        using var calculations = new Calculations(1, 1, Soon, Ever, NullLogger.Instance);
        var first = calculations.Run(() => Hold(released), CancellationToken.None);

        var second = await calculations.Run(() => throw new InvalidOperationException("started"), CancellationToken.None);

        Assert.Equal(ProblemType.Busy.Type, second.Refusal!.Type);
        released.Set();
        Assert.Same(Answer, (await first).Outcome);
    }

    [Fact]
    public async Task Calculation_that_was_stopped_without_an_answer_is_out_of_time_and_frees_the_slot()
    {
        using var calculations = new Calculations(1, 0, Ever, Ever, NullLogger.Instance);

        Assert.Equal(ProblemType.OutOfTime.Type, (await calculations.Run(() => throw new OperationCanceledException(), CancellationToken.None)).Refusal!.Type);

        Assert.Same(Answer, (await calculations.Run(() => Answer, CancellationToken.None)).Outcome);
    }

    [Fact]
    public async Task Fault_reaches_the_caller_and_frees_the_slot()
    {
        using var calculations = new Calculations(1, 0, Ever, Ever, NullLogger.Instance);

        await Assert.ThrowsAsync<InvalidOperationException>(() => calculations.Run(() => throw new InvalidOperationException("fault"), CancellationToken.None));

        Assert.Same(Answer, (await calculations.Run(() => Answer, CancellationToken.None)).Outcome);
    }

    [Fact]
    public async Task Caller_who_goes_away_while_waiting_gives_the_place_up()
    {
        using var released = new ManualResetEventSlim();
        using var calculations = new Calculations(1, 1, Ever, Ever, NullLogger.Instance);
        using var caller = new CancellationTokenSource();
        var first = calculations.Run(() => Hold(released), CancellationToken.None);
        var second = calculations.Run(() => Answer, caller.Token);

        await caller.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => second);
        var third = calculations.Run(() => Answer, CancellationToken.None);
        Assert.False(third.IsCompleted);
        released.Set();
        Assert.Same(Answer, (await third).Outcome);
        Assert.Same(Answer, (await first).Outcome);
    }

    private static Answered Hold(ManualResetEventSlim released)
    {
        released.Wait();
        return Answer;
    }
}
