namespace SawEngine.Core.Scheduling;

/// <summary>Gives times to jobs whose saws and sequences somebody has chosen.</summary>
public interface IScheduleTimer
{
    /// <summary>
    /// The schedule of the sequences as they are given: each part as early as the rules let it be behind those before it, overtime included, whatever that costs. A part for which there is no
    /// room is left out with the reason, and the others go on without it; jobs in no sequence are not mentioned. Same sequences, same times.
    /// </summary>
    /// <param name="problem">The problem.</param>
    /// <param name="sequences">At most one for each saw; their jobs are of the problem and may run on their saw, and parts of a job have no step in common.</param>
    Schedule Time(ScheduleProblem problem, IReadOnlyList<GivenSequence> sequences);
}
