using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>What the clock writes down of a job.</summary>
internal sealed class PlacedJob
{
    private int markedSetUps;
    private int markedWork;

    public List<ScheduledSetUp> SetUps { get; } = [];

    public List<WorkSpan> Work { get; } = [];

    public void Mark() => (markedSetUps, markedWork) = (SetUps.Count, Work.Count);

    public void BackToMark()
    {
        SetUps.RemoveRange(markedSetUps, SetUps.Count - markedSetUps);
        Work.RemoveRange(markedWork, Work.Count - markedWork);
    }
}
