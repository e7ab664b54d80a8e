using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Scheduling;

/// <summary>
/// Improves a plan by its own times, with calendars, overtime, operators and cranes: sequences are shaken where the axis says that it costs least, or overtime
/// is worked or left; each plan is timed, and kept unless it is worse (iterated greedy, Ruiz and Stuetzle 2007).
/// </summary>
internal sealed class DecodedSearch
{
    private const int Seed = 2;
    private const int OvertimeOneIn = 8;

    private readonly Shop shop;
    private readonly WorkMeter meter;
    private readonly SplitMix random = new(Seed);
    private readonly Decoding decoding;
    private readonly AxisSequences axis;
    private readonly Shaking shaking;
    private readonly (int Saw, int Window)[] overtime;
    private readonly SawPlan current;
    private readonly SawPlan trial;

    private DecodedSearch(AxisSequences axis, SawPlan start, WorkMeter meter)
    {
        (this.axis, this.meter, shop) = (axis, meter, start.Shop);
        decoding = new(shop);
        shaking = new(axis.Sequences, random);
        overtime = [.. shop.Saws.SelectMany((saw, i) => saw.Overtime.Select((_, window) => (i, window)))];
        (current, trial) = (new(start), new(start));
    }

    /// <summary>The best plan found within the work.</summary>
    public static SawPlan Run(SawPlan start, WorkMeter meter)
    {
        if (AxisSequences.Of(start, meter) is not { } axis)
            return start;
        var search = new DecodedSearch(axis, start, meter);
        search.Improve();
        return search.current;
    }

    private void Improve()
    {
        var score = current.Score();
        var copy = new SequencesCopy(axis.Sequences);
        while (!meter.Stopped && (overtime.Length > 0 || axis.Sequences.Jobs > 1))
        {
            trial.CopyFrom(current);
            if (overtime.Length > 0 && (axis.Sequences.Jobs == 1 || random.OneIn(OvertimeOneIn)))
                ChangeOvertime();
            else
                Shake();
            decoding.Run(trial);
            meter.Count(shop.Jobs.Length);
            var other = trial.Score();
            if (other.CompareTo(score) > 0)
            {
                copy.PutBack();
                continue;
            }
            score = other;
            current.CopyFrom(trial);
            copy.Take();
        }
    }

    private void ChangeOvertime()
    {
        var (saw, window) = overtime[random.Below(overtime.Length)];
        trial.WorkOvertime(saw, window, !trial.OvertimeWorked[saw][window]);
    }

    private void Shake()
    {
        shaking.Shake();
        axis.WriteTo(trial);
    }
}
