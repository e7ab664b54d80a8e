using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Tests.Scheduling;

/// <summary>
/// Schedules one job after the other, second by second and step by step, as one would by hand: slow, at random where there is a choice,
/// and independent of the engine. What it makes shows that a clean schedule is found clean.
/// </summary>
internal sealed class PlainShop
{
    private readonly ScheduleProblem problem;
    private readonly Random random;
    private readonly Dictionary<string, PlainSaw> saws;
    private readonly List<(string Who, string SawId, int Start, int Finish)> held;
    private readonly List<ScheduledJob> placed;

    private PlainShop(ScheduleProblem problem, Random random)
    {
        var usesOvertime = random.Next(2) == 0;
        (this.problem, this.random, held, placed) = (problem, random, [], []);
        saws = problem.Saws.ToDictionary(saw => saw.SawId, saw => new PlainSaw(problem, saw, usesOvertime));
    }

    private PlainShop(PlainShop other)
    {
        (problem, random, held, placed) = (other.problem, other.random, [.. other.held], [.. other.placed]);
        saws = other.saws.ToDictionary(saw => saw.Key, saw => saw.Value.Copy());
    }

    public static Schedule Schedule(ScheduleProblem problem, Random random)
    {
        var (shop, left) = (new PlainShop(problem, random), new List<UnscheduledJob>());
        foreach (var job in problem.Jobs.OrderBy(job => job.Frozen is null).ThenBy(job => job.Frozen?.Start).ThenBy(job => job.JobId, StringComparer.Ordinal))
            shop = shop.With(job, left);
        var jobs = shop.placed.OrderBy(job => job.SawId, StringComparer.Ordinal).ThenBy(job => job.Sequence).ToList();
        return new()
        {
            Jobs = jobs,
            Unscheduled = [.. left.OrderBy(job => job.JobId, StringComparer.Ordinal)],
            CostMicros = ScheduleCost.Micros(problem, jobs),
            BoundMicros = 0,
            Rule = "by hand",
        };
    }

    private bool IsDone(string jobId) => placed.Exists(job => job.JobId == jobId);

    private PlainShop With(ScheduleJob job, List<UnscheduledJob> left)
    {
        if (IsDone(job.JobId) || left.Exists(other => other.JobId == job.JobId))
            return this;
        var shop = this;
        foreach (var before in job.Frozen is null ? job.After : [])
            shop = shop.With(problem.Jobs.Single(other => other.JobId == before), left);
        var reason = job.Options.Count == 0 ? UnscheduledReason.NoSaw : UnscheduledReason.NoShift;
        if (job.Frozen is null && !job.After.All(shop.IsDone))
            reason = UnscheduledReason.PredecessorUnscheduled;
        else if (shop.Placed(job) is { } next)
            return next;
        left.Add(new(job.JobId, reason));
        return shop;
    }

    private PlainShop? Placed(ScheduleJob job)
    {
        var options = job.Options.Where(option => job.Frozen is null || job.Frozen.SawId == option.SawId).ToArray();
        if (options.Length == 0)
            return null;
        var steps = options[0].Steps.Sum(run => run.Count);
        List<int> cuts = [0, .. Enumerable.Range(1, steps - 1).Where(_ => job.MostParts > 1).OrderBy(_ => random.Next()).Take(random.Next(job.MostParts)).Order(), steps];
        PlainShop? shop = this;
        for (var part = 0; part + 1 < cuts.Count && shop is not null; part++)
        {
            random.Shuffle(options);
            var before = shop;
            shop = options.Select(option =>
            {
                var trial = new PlainShop(before);
                return trial.Place(job, option, cuts[part], job.MostParts > 1 ? cuts[part + 1] : int.MaxValue) ? trial : null;
            }).FirstOrDefault(trial => trial is not null);
        }
        return shop;
    }

    private bool Place(ScheduleJob job, JobOption option, int first, int end)
    {
        var (saw, setUps) = (saws[option.SawId], new List<ScheduledSetUp>());
        var isRunning = job.Frozen is { Start: <= 0 };
        if (isRunning)
            saw.Know(option.SetUp.BladeId);
        else if (!SetUp(saw, option.SetUp, setUps))
            return false;
        string?[] to = [option.SetUp.GradeGroup, option.SetUp.Section, option.SetUp.Angle];
        for (var i = 0; i < to.Length; i++)
            saw.State[i] = to[i] ?? saw.State[i];
        var steps = option.Steps.SelectMany(run => Enumerable.Repeat(run with { Count = 1 }, run.Count)).Skip(first).Take(end - first).ToList();
        var done = placed.Where(other => job.After.Contains(other.JobId)).Select(other => (int)other.Finish);
        var earliest = job.Frozen is { } place ? (int)Math.Max(0, place.Start) : done.Append((int)job.Release).Max();
        var work = new List<WorkSpan>();
        var isPlaced = option.MayPause ? Work(saw, option, steps, setUps, work, earliest, PlainSaw.Horizon) : RunThrough(saw, option, steps, setUps, work, earliest);
        if (isPlaced)
            placed.Add(new() { JobId = job.JobId, SawId = option.SawId, Sequence = ++saws[option.SawId].Sequence, FirstStep = first, SetUps = [.. setUps.OrderBy(part => part.Start)], Work = work });
        return isPlaced;
    }

    private bool SetUp(PlainSaw saw, SetUpState to, List<ScheduledSetUp> setUps)
    {
        var times = saw.Saw.SetUpTimes;
        (string Kind, string? From, string? To, long Usual, SetUpChanges? Changes)[] kinds =
        [
            (SetUpRules.GradeGroup, saw.State[0], to.GradeGroup, times.GradeGroup, times.GradeGroupChanges),
            (SetUpRules.Blade, saw.BladeId, to.BladeId, times.Blade, null),
            (SetUpRules.Section, saw.State[1], to.Section, times.Section, times.SectionChanges),
            (SetUpRules.Angle, saw.State[2], to.Angle, times.Angle, times.AngleChanges),
        ];
        var (free, following) = (saw.At, saw.At);
        foreach (var change in kinds.Where(change => change.To is not null && change.To != change.From))
        {
            var listed = change.Changes?.Pairs.Where(pair => pair.From == change.From && pair.To == change.To).Select(pair => (long?)pair.Seconds).FirstOrDefault();
            var (seconds, isBeside) = ((int)(listed ?? change.Usual), times.Beside.Contains(change.Kind));
            long? life = change.Kind == SetUpRules.Blade ? Mount(saw, change.To, 0) : null;
            if (seconds == 0 && life is null)
                continue;
            if (Part(saw, change.Kind, seconds, isBeside ? free : following, life) is not { } part)
                return false;
            setUps.Add(part);
            following = isBeside ? following : (int)part.Finish;
            saw.At = Math.Max(saw.At, (int)part.Finish);
        }
        return true;
    }

    // Any blade that makes the next cut; a new one if need be.
    private long Mount(PlainSaw saw, string? bladeId, long least)
    {
        long[] lives = [ScheduleSaw.FullBladeLife, .. saw.Ready.Where(blade => blade.BladeId == bladeId && blade.Life >= least).Select(blade => blade.Life)];
        var life = lives[random.Next(lives.Length)];
        saw.Mount(bladeId, life);
        return life;
    }

    private ScheduledSetUp? Part(PlainSaw saw, string kind, int seconds, int from, long? life)
    {
        for (var start = from; start < PlainSaw.Horizon; start++)
        {
            if (!saw.IsAttended(start, start + seconds) || !IsManned(saw, start, start + seconds) || Hands(saw, start, start + seconds) is not { } hands)
                continue;
            Hold(saw, start, start + seconds, hands.OperatorId, null);
            return new(kind, start, start + seconds, hands.OperatorId, life);
        }
        return null;
    }

    // A stretch of time after the other in which somebody is there, until one holds all of it.
    private bool RunThrough(PlainSaw saw, JobOption option, List<StepRun> steps, List<ScheduledSetUp> setUps, List<WorkSpan> work, int earliest)
    {
        for (var start = Math.Max(saw.At, earliest); start < PlainSaw.Horizon; start++)
        {
            if (!IsOpen(saw, start))
                continue;
            var until = start;
            while (IsOpen(saw, until))
                until++;
            var trial = new PlainShop(this);
            var (changes, spans) = (new List<ScheduledSetUp>(), new List<WorkSpan>());
            if (trial.Work(trial.saws[option.SawId], option with { MayRunUnattended = false }, steps, changes, spans, start, until))
            {
                setUps.AddRange(changes);
                work.AddRange(spans);
                saws[option.SawId] = trial.saws[option.SawId];
                held.AddRange(trial.held.Skip(held.Count));
                return true;
            }
            start = until;
        }
        return false;
    }

    /// <summary>Whether the saw is attended and somebody of its team is there.</summary>
    private static bool IsOpen(PlainSaw saw, int second) => saw.IsAttended(second) && (saw.Team.Count == 0 || saw.Team.Exists(one => IsOnShift(one, second)));

    private static bool IsOnShift(ScheduleOperator one, int second) => one.Windows.Any(window => window.Start <= second && second < window.End);

    private bool Work(PlainSaw saw, JobOption option, List<StepRun> steps, List<ScheduledSetUp> setUps, List<WorkSpan> work, int earliest, int until)
    {
        var (start, open) = (0, new List<StepRun>());
        foreach (var step in steps)
        {
            if (step.BladeShare > saw.Life)
            {
                Close();
                var life = Mount(saw, saw.BladeId, step.BladeShare);
                if (Part(saw, SetUpRules.BladeWorn, (int)saw.Saw.SetUpTimes.Blade, saw.At, life) is not { } part || part.Finish > until)
                    return false;
                setUps.Add(part);
                saw.At = (int)part.Finish;
            }
            saw.Cut(step.BladeShare);
            var isCraneLoad = step.Kind == StepKind.CraneLoad && saw.Cranes.Count > 0;
            if (!isCraneLoad && open.Count > 0 && MayRun(saw, option, start, [.. open, step]))
            {
                open.Add(step);
                continue;
            }
            Close();
            start = Math.Max(saw.At, earliest);
            while (start < until && !(isCraneLoad ? MayLoad(saw, start, step) : MayRun(saw, option, start, [step])))
                start++;
            if (start >= until)
                return false;
            open.Add(step);
            if (isCraneLoad)
                Close();
        }
        Close();
        return saw.At <= until;

        void Close()
        {
            if (open.Count == 0)
                return;
            var finish = start + Seconds(open);
            var isCraneLoad = open[0].Kind == StepKind.CraneLoad && saw.Cranes.Count > 0;
            var hands = isCraneLoad ? Hands(saw, start, finish)!.Value.OperatorId : null;
            var crane = isCraneLoad ? Crane(saw, start, finish) : null;
            Hold(saw, start, finish, hands, crane);
            work.Add(new(start, finish, open.Count, hands, crane));
            saw.At = finish;
            open.Clear();
        }
    }

    private bool MayLoad(PlainSaw saw, int start, StepRun step)
    {
        var finish = start + Seconds([step]);
        return saw.IsAttended(start, finish) && IsManned(saw, start, finish) && Hands(saw, start, finish) is not null && Crane(saw, start, finish) is not null;
    }

    private bool MayRun(PlainSaw saw, JobOption option, int start, List<StepRun> steps)
    {
        var finish = start + Seconds(steps);
        return saw.IsAttended(start) && saw.MayRun(start, finish, option.MayRunUnattended) && IsManned(saw, start, finish)
            && (saw.Saw.Unattended?.Windows ?? []).All(window => IsWithin(saw.Saw.Unattended!, window, start, finish, steps));
    }

    private static bool IsWithin(UnattendedRuns runs, TimeWindow window, int start, int finish, List<StepRun> steps)
    {
        var (at, bars, cuts) = (start * 1000L, 0, 0);
        foreach (var step in steps)
        {
            var isIn = at < window.End * 1000 && at + step.Milliseconds > window.Start * 1000;
            if (isIn && step.Kind is not (StepKind.Cut or StepKind.Load))
                return false;
            bars += isIn && step.Kind == StepKind.Load ? 1 : 0;
            cuts += isIn && step.Kind == StepKind.Cut ? 1 : 0;
            at += step.Milliseconds;
        }
        var isLong = start < window.End && finish > window.Start && Math.Min(finish, window.End) - window.Start > runs.LongestSeconds;
        return bars <= runs.Bars && cuts <= runs.Cuts && !isLong;
    }

    /// <summary>Whether there are operators enough for this saw besides those that are at work.</summary>
    private bool IsManned(PlainSaw saw, int start, int finish)
    {
        if (saw.Team.Count == 0)
            return true;
        var others = saw.Team[0].SawIds.Where(id => id != saw.Saw.SawId).Select(id => saws[id]).ToList();
        return Enumerable.Range(start, finish - start).Where(second => saw.IsAttended(second)).All(second =>
            1 + others.Count(other => other.Busy[second]) <= saw.Team.Where(one => IsOnShift(one, second)).Sum(one => one.MostSaws));
    }

    /// <summary>An operator who is free; null as their id where the saw has none, null where none is free.</summary>
    private (string? OperatorId, bool IsFree)? Hands(PlainSaw saw, int start, int finish)
    {
        if (saw.Team.Count == 0)
            return (null, true);
        var free = saw.Team.Find(one => one.Windows.Any(window => window.Start <= start && finish <= window.End) && IsFree(one.OperatorId, saw, start, finish, problem.WalkingSeconds));
        return free is null ? null : (free.OperatorId, true);
    }

    private string? Crane(PlainSaw saw, int start, int finish) => saw.Cranes.Find(crane => IsFree(crane, saw, start, finish, 0));

    private bool IsFree(string who, PlainSaw saw, int start, int finish, long walking) => held.TrueForAll(other =>
    {
        var apart = other.SawId == saw.Saw.SawId ? 0 : walking;
        return other.Who != who || finish + apart <= other.Start || other.Finish + apart <= start;
    });

    private void Hold(PlainSaw saw, int start, int finish, params string?[] who)
    {
        held.AddRange(who.OfType<string>().Select(one => (one, saw.Saw.SawId, start, finish)));
        for (var second = start; second < finish; second++)
            saw.Busy[second] |= saw.IsAttended(second);
    }

    private static int Seconds(List<StepRun> steps) => (int)((steps.Sum(step => step.Milliseconds) + 999) / 1000);
}
