using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Improves a plan by its own times, with calendars, overtime, operators and cranes: jobs are taken out and put back where the axes say that it costs least
/// (iterated greedy, Ruiz and Stuetzle 2007), moved or exchanged at random, or overtime is worked or left. Each plan is timed; a slightly worse one may be
/// gone on from, less so toward the end.
/// </summary>
internal sealed class DecodedSearch
{
    private const int Seed = 2;
    private const int Rounds = 4; // each goes back to the best
    private const int AllowedShare = 100; // of the cost, at first
    private const int Levels = 64;

    private readonly Shop shop;
    private readonly WorkMeter meter;
    private readonly SplitMix random = new(Seed);
    private readonly Decoding decoding;
    private readonly AxisSequences axis;
    private readonly Shaking shaking;
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
        shaking = new(axis.Sequences, random);
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
        var allowance = bestScore.CostMicros / AllowedShare * left / meter.Limit * random.Below(Levels) / Levels;
        return score.CostMicros - bestScore.CostMicros < allowance;
    }

    private void Change()
    {
        if (axis.Sequences.Jobs == 1 || (overtime.Length > 0 && random.OneIn(8)))
            ChangeOvertime();
        else if (random.OneIn(2))
            Shake();
        else if (random.OneIn(3))
            Exchange();
        else
            Move();
    }

    private void ChangeOvertime()
    {
        if (overtime.Length == 0)
            return;
        var (saw, window) = overtime[random.Below(overtime.Length)];
        trial.WorkOvertime(saw, window, !trial.OvertimeWorked[saw][window]);
    }

    private void Shake()
    {
        axis.ReadFrom(trial);
        axis.Sequences.Aim(axis.Sequences.Makespan());
        shaking.Shake();
        axis.WriteTo(trial);
    }

    private void Move()
    {
        if (Draw() is not { } from)
            return;
        var job = trial.Sequences[from.Saw][from.Place];
        var saw = random.Below(shop.Saws.Length);
        if (shop.Work[job][saw] is null)
            saw = from.Saw;
        trial.Sequences[from.Saw].RemoveAt(from.Place);
        trial.Sequences[saw].Insert(random.Between(trial.FrozenCount(saw), trial.Sequences[saw].Count), job);
    }

    private void Exchange()
    {
        if (Draw() is not { } one || Draw() is not { } other)
            return;
        var (job, otherJob) = (trial.Sequences[one.Saw][one.Place], trial.Sequences[other.Saw][other.Place]);
        if (shop.Work[job][other.Saw] is not null && shop.Work[otherJob][one.Saw] is not null)
            (trial.Sequences[one.Saw][one.Place], trial.Sequences[other.Saw][other.Place]) = (otherJob, job);
    }

    /// <summary>Any scheduled job that is not frozen.</summary>
    private (int Saw, int Place)? Draw()
    {
        var free = 0;
        for (var saw = 0; saw < shop.Saws.Length; saw++)
            free += trial.Sequences[saw].Count - trial.FrozenCount(saw);
        if (free == 0)
            return null;
        var nth = random.Below(free);
        for (var saw = 0; ; saw++)
        {
            var frozen = trial.FrozenCount(saw);
            if (nth < trial.Sequences[saw].Count - frozen)
                return (saw, frozen + nth);
            nth -= trial.Sequences[saw].Count - frozen;
        }
    }
}
