using System.Collections.Concurrent;

namespace SawEngine.Api.Http;

/// <summary>Threads that do nothing but calculate. They are kept, because starting one costs more than a small calculation.</summary>
internal sealed class CalculationThreads : TaskScheduler, IDisposable
{
    private readonly BlockingCollection<Task> _tasks = [];

    public CalculationThreads(int count)
    {
        MaximumConcurrencyLevel = count;
        for (var i = 0; i < count; i++)
            new Thread(Work) { IsBackground = true, Name = $"Calculation {i + 1}" }.Start();
    }

    public override int MaximumConcurrencyLevel { get; }

    public void Dispose() => _tasks.CompleteAdding();

    protected override void QueueTask(Task task) => _tasks.Add(task);

    protected override bool TryExecuteTaskInline(Task task, bool taskWasPreviouslyQueued) => false;

    protected override IEnumerable<Task> GetScheduledTasks() => _tasks;

    private void Work()
    {
        foreach (var task in _tasks.GetConsumingEnumerable())
            TryExecuteTask(task);
    }
}
