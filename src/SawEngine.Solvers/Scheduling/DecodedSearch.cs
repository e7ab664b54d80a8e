using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Improves a plan by its own times, with calendars, overtime, operators and cranes: jobs are taken out and put back where the axes say that it costs least
/// (iterated greedy, Ruiz and Stuetzle 2007), or changed at random where the axes find that hardly dearer, or overtime is
/// worked or left, jobs have hands before others, or keep the starts of the earlier schedule. Each plan is timed;
/// a slightly worse one may be gone on from, less so toward the end.
/// </summary>
internal sealed class DecodedSearch
{
    private const int Seed = 2;
    private const int Rounds = 8; // each goes back to the best
    private const int DearerShare = 10; // of the cost by job
    private const int MostChanges = 3;
    private const int MostDraws = 2000;
    private const int DrawsPerPlacement = 20; // in time
    private const int Levels = 64;

    private static readonly long[] AheadHours = [0, 1, 8, 72, 1_000];

    private readonly Shop shop;
    private readonly bool costsMoves;
    private readonly WorkMeter meter;
    private readonly SplitMix random = new(Seed);
    private readonly Decoding decoding;
    private readonly AxisSequences axis;
    private readonly Shaking shaking;
    private readonly RandomChanges changes;
    private readonly (int Saw, int Window)[] overtime;
    private readonly SawPlan best;
    private readonly SawPlan current;
    private readonly SawPlan trial;
    private Score bestScore;
    private Score currentScore;

    private DecodedSearch(AxisSequences axis, SawPlan start, WorkMeter meter)
    {
        (this.axis, this.meter, shop) = (axis, meter, start.Shop);
        decoding = new(shop);
        costsMoves = shop.Problem.Previous is { CostMicrosPerHourMoved: > 0 };
        shaking = new(axis.Sequences, random);
        changes = new(axis.Sequences, random);
        overtime = [.. shop.Saws.SelectMany((saw, i) => saw.Overtime.Select((_, window) => (i, window)))];
        (best, current, trial) = (new(start), new(start), new(start));
        bestScore = currentScore = best.Score();
    }

    /// <summary>The best plan found within the work.</summary>
    public static SawPlan Run(SawPlan start, WorkMeter meter)
    {
        if (AxisSequences.Of(start, meter) is not { } axis)
            return start;
        var search = new DecodedSearch(axis, start, meter);
        if (search.overtime.Length > 0 || axis.Sequences.Jobs > 1)
            search.Improve();
        return search.best;
    }

    private void Improve()
    {
        for (var round = 1; !meter.Stopped; round++)
        {
            Restart();
            while (!meter.Stopped && meter.Spent < meter.Limit / Rounds * round)
                Step();
        }
    }

    private void Restart()
    {
        current.CopyFrom(best);
        currentScore = bestScore;
    }

    private void Step()
    {
        trial.CopyFrom(current);
        Change();
        decoding.Run(trial);
        meter.Count(shop.Jobs.Length);
        var score = trial.Score();
        if (!IsAllowed(score))
            return;
        current.CopyFrom(trial);
        currentScore = score;
        if (score.CompareTo(bestScore) >= 0)
            return;
        best.CopyFrom(trial);
        bestScore = score;
    }

    private bool IsAllowed(Score score)
    {
        if (score.Unscheduled != currentScore.Unscheduled || score.CostMicros <= currentScore.CostMicros)
            return score.CompareTo(currentScore) <= 0;
        var left = Math.Max(0, meter.Limit - meter.Spent);
        // At first what a job costs on average.
        var allowance = bestScore.CostMicros / shop.Jobs.Length * left / meter.Limit * random.Below(Levels) / Levels;
        return score.CostMicros - bestScore.CostMicros < allowance;
    }

    private void Change()
    {
        if (axis.Sequences.Jobs == 1 || (overtime.Length > 0 && random.OneIn(8)))
            ChangeOvertime();
        else if (shop.IsCoupled && random.OneIn(8))
            ChangeAhead();
        else if (costsMoves && random.OneIn(4))
            ChangeKept();
        else
            ChangeSequences();
    }

    private void ChangeOvertime()
    {
        if (overtime.Length == 0)
            return;
        var (saw, window) = overtime[random.Below(overtime.Length)];
        trial.WorkOvertime(saw, window, !trial.OvertimeWorked[saw][window]);
    }

    private void ChangeAhead() => trial.Ahead[random.Below(shop.Jobs.Length)] = AheadHours[random.Below(AheadHours.Length)] * ScheduleCost.SecondsPerHour;

    private void ChangeKept()
    {
        var job = random.Below(shop.Jobs.Length);
        trial.KeepsStart[job] = !trial.KeepsStart[job];
    }

    private void ChangeSequences()
    {
        axis.ReadFrom(trial);
        axis.Sequences.Aim(axis.Sequences.Makespan());
        if (random.OneIn(4))
            shaking.Shake();
        else
            ChangeAtRandom();
        axis.WriteTo(trial);
    }

    /// <summary>Some changes that the axes find hardly dearer.</summary>
    private void ChangeAtRandom()
    {
        var (wanted, draws) = (random.Between(1, MostChanges), 0);
        while (wanted > 0 && draws++ < MostDraws)
            if (changes.Try(axis.Sequences.Total() / axis.Sequences.Jobs / DearerShare / Levels * random.Below(Levels)))
                wanted--;
        meter.Count(draws / DrawsPerPlacement);
    }
}
