using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Rules of which job follows which: the jobs are there, each is named once, and none waits for itself.</summary>
internal static class PrecedenceRules
{
    public static void Check<T>(IReadOnlyList<ScheduleJobJson> jobs, ValidationContext<T> context)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < jobs.Count; i++)
            index.TryAdd(jobs[i].JobId, i);
        for (var i = 0; i < jobs.Count; i++)
            CheckNames(jobs[i].After, i, index, context);
        foreach (var circle in new Circles([.. jobs.Select(job => job.After.Where(index.ContainsKey).Select(id => index[id]).ToList())]).Find())
        {
            var names = string.Join(" after ", circle.Append(circle[0]).Select(i => Quoted.Text(jobs[i].JobId)).Take(Limits.FaultsReported));
            context.Fault($"[{circle[0]}].{nameof(ScheduleJobJson.After)}", FaultCode.AfterItself, $"This job waits for itself: {names}.");
        }
    }

    private static void CheckNames<T>(IReadOnlyList<string> after, int job, Dictionary<string, int> index, ValidationContext<T> context)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var j = 0; j < after.Count; j++)
        {
            if (!index.ContainsKey(after[j]))
                context.Fault($"[{job}].{nameof(ScheduleJobJson.After)}[{j}]", FaultCode.UnknownJob, $"{Quoted.Text(after[j])} is none of the jobs.");
            else if (!seen.Add(after[j]))
                context.Fault($"[{job}].{nameof(ScheduleJobJson.After)}[{j}]", FaultCode.DuplicateId, $"{Quoted.Text(after[j])} stands in the list already.");
        }
    }

    /// <summary>Follows jobs in depth until one is met that is on the way. The depth is at most the number of jobs.</summary>
    private sealed class Circles(IReadOnlyList<List<int>> after)
    {
        private readonly List<int> _way = [];
        private readonly int?[] _placeOnWay = new int?[after.Count];
        private readonly bool[] _isMet = new bool[after.Count];
        private readonly HashSet<int> _told = [];
        private readonly List<List<int>> _found = [];

        /// <summary>Circles of jobs, each from the job that is listed first; no job is in two of them.</summary>
        public List<List<int>> Find()
        {
            for (var job = 0; job < after.Count; job++)
                Follow(job);
            return _found;
        }

        private void Follow(int job)
        {
            if (_isMet[job])
                return;
            _isMet[job] = true;
            _placeOnWay[job] = _way.Count;
            _way.Add(job);
            foreach (var other in after[job])
            {
                if (_placeOnWay[other] is { } place && _told.Add(job))
                    Tell(_way[place..], job);
                else
                    Follow(other);
            }
            _way.RemoveAt(_way.Count - 1);
            _placeOnWay[job] = null;
        }

        private void Tell(List<int> circle, int last)
        {
            if (circle.Exists(job => job != last && _told.Contains(job)))
                return;
            _told.UnionWith(circle);
            var first = circle.IndexOf(circle.Min());
            _found.Add([.. circle[first..], .. circle[..first]]);
        }
    }
}
