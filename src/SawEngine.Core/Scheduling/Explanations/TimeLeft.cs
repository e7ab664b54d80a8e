namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>A stretch of time from 0 on of which parts are taken, each second once.</summary>
internal sealed class TimeLeft(long end)
{
    private List<TimeWindow> left = [new(0, end)];

    /// <summary>Takes what is left of some windows, in any order; answers how many seconds.</summary>
    public long Take(IEnumerable<TimeWindow> windows)
    {
        var (rest, taken, at) = (new List<TimeWindow>(left.Count), 0L, 0);
        var wanted = windows.Where(window => window.End > window.Start).OrderBy(window => window.Start).ToList();
        foreach (var free in left)
        {
            var from = free.Start;
            while (at < wanted.Count && wanted[at].End <= from)
                at++;
            for (var next = at; next < wanted.Count && wanted[next].Start < free.End; next++)
            {
                var (start, finish) = (Math.Max(from, wanted[next].Start), Math.Min(free.End, wanted[next].End));
                if (finish <= start)
                    continue;
                if (start > from)
                    rest.Add(new(from, start));
                taken += finish - start;
                from = finish;
            }
            if (from < free.End)
                rest.Add(new(from, free.End));
        }
        left = rest;
        return taken;
    }
}
