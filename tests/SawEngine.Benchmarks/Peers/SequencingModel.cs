using Google.OrTools.Sat;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Benchmarks.Peers;

/// <summary>
/// A plain model of the whole for CP-SAT: a circuit of jobs for each saw with set-ups on its arcs, times in attended minutes, tardiness at its cost stretched to
/// attended time. It is spared what makes it harder: operators, crane, worn blades, overtime and unattended runs; its sequences are timed with all of them.
/// </summary>
internal static class SequencingModel
{
    private const int SecondsPerUnit = 60;
    private const long MicrosPerCost = 1000;

    /// <summary>Sequences of job ids by saw id; null where none is found in time.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>>? Solve(ScheduleProblem problem, double seconds)
    {
        var model = new CpModel();
        var jobs = problem.Jobs.Select((job, i) => (Job: job, Node: i + 1)).ToList();
        var horizon = problem.Jobs.Sum(job => job.Options.Max(option => Units(option.WorkMilliseconds / 1000) + 60)) + problem.Jobs.Max(job => Units(job.Release));
        var finish = problem.Jobs.Select(job => model.NewIntVar(0, horizon, job.JobId)).ToList();
        var presence = problem.Jobs.Select(_ => new List<ILiteral>()).ToList();
        var cost = new List<LinearExpr>();
        var arcsOfSaw = new List<(string SawId, List<(int From, int To, BoolVar Literal)> Arcs)>();
        foreach (var saw in problem.Saws)
        {
            var arcs = new List<(int From, int To, BoolVar Literal)>();
            var circuit = model.AddCircuit();
            var eligible = jobs.Select(one => (one.Job, one.Node, Option: one.Job.Options.FirstOrDefault(option => option.SawId == saw.SawId))).Where(one => one.Option is not null).ToList();
            var axis = new AttendedMinutes(saw);
            var empty = model.NewBoolVar("");
            circuit.AddArc(0, 0, empty);
            foreach (var (job, node, option) in eligible)
            {
                var isHere = model.NewBoolVar("");
                presence[node - 1].Add(isHere);
                circuit.AddArc(node, node, isHere.Not());
                var work = Units(option!.WorkMilliseconds / 1000);
                model.Add(finish[node - 1] >= axis.Of(job.Release) + work).OnlyEnforceIf(isHere);
                cost.Add(isHere * (option.CostMicrosPerSecond * (option.WorkMilliseconds / 1000) / MicrosPerCost));
                cost.Add(Tardiness(problem, job, finish[node - 1], isHere, axis, horizon, model));
                AddArc(0, saw.InitialState, node, option, work);
                var last = model.NewBoolVar("");
                circuit.AddArc(node, 0, last);
                foreach (var (_, other, next) in eligible.Where(other => other.Node != node))
                    AddArc(node, option.SetUp, other, next!, Units(next!.WorkMilliseconds / 1000));
            }
            arcsOfSaw.Add((saw.SawId, arcs));

            void AddArc(int from, SetUpState before, int to, JobOption next, long work)
            {
                var literal = model.NewBoolVar("");
                circuit.AddArc(from, to, literal);
                arcs.Add((from, to, literal));
                var setUp = Units(SetUpRules.Seconds(before, next.SetUp, saw.SetUpTimes));
                cost.Add(literal * (setUp * SecondsPerUnit * next.SetUpCostMicrosPerSecond / MicrosPerCost));
                if (from == 0)
                    model.Add(finish[to - 1] >= setUp + work).OnlyEnforceIf(literal);
                else
                    model.Add(finish[to - 1] >= finish[from - 1] + setUp + work).OnlyEnforceIf(literal);
            }
        }
        foreach (var literals in presence)
            model.AddExactlyOne(literals);
        model.Minimize(LinearExpr.Sum(cost));
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"max_time_in_seconds:{seconds} num_workers:1") };
        return solver.Solve(model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? arcsOfSaw.ToDictionary(saw => saw.SawId, saw => (IReadOnlyList<string>)Sequence(saw.Arcs, solver, problem), StringComparer.Ordinal)
            : null;
    }

    private static LinearExpr Tardiness(ScheduleProblem problem, ScheduleJob job, IntVar finish, BoolVar isHere, AttendedMinutes axis, long horizon, CpModel model)
    {
        var delivery = problem.Deliveries.FirstOrDefault(one => one.JobIds.Contains(job.JobId) && one.Due is not null);
        if (delivery is null)
            return LinearExpr.Constant(0);
        var late = model.NewIntVar(0, horizon, "");
        model.Add(late >= finish - axis.Of(delivery.Due!.Value)).OnlyEnforceIf(isHere);
        return late * (long)(delivery.CostMicrosPerHourLate * axis.Stretch * SecondsPerUnit / ScheduleCost.SecondsPerHour / MicrosPerCost);
    }

    private static List<string> Sequence(List<(int From, int To, BoolVar Literal)> arcs, CpSolver solver, ScheduleProblem problem)
    {
        var next = arcs.Where(arc => solver.BooleanValue(arc.Literal)).ToDictionary(arc => arc.From, arc => arc.To);
        var sequence = new List<string>();
        for (var node = next.GetValueOrDefault(0); node != 0; node = next.GetValueOrDefault(node))
            sequence.Add(problem.Jobs[node - 1].JobId);
        return sequence;
    }

    private static long Units(long seconds) => (seconds + SecondsPerUnit - 1) / SecondsPerUnit;

    /// <summary>Attended time of a saw in units, without the breaks.</summary>
    private sealed class AttendedMinutes(ScheduleSaw saw)
    {
        /// <summary>Hours that pass for each attended one.</summary>
        public double Stretch { get; } = (double)(saw.Windows[^1].End - saw.Windows[0].Start) / saw.Windows.Sum(window => window.Seconds);

        public long Of(long second) => saw.Windows.Sum(window => Math.Clamp(second - window.Start, 0, window.Seconds)) / SecondsPerUnit;
    }
}
