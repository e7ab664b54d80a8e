using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>
/// Holds a schedule against an earlier one: starting-time deviation, jobs on another saw, reversed pairs, promises newly broken, as the literature on rescheduling counts
/// them (Wu, Storer and Chang 1993; Hall and Potts 2004; Alagoz and Azizoglu 2003). Of a job in parts the first one counts.
/// </summary>
internal static class ScheduleChanges
{
    private const int HourDecimals = 4;

    /// <summary>The changes; null where the request has no earlier schedule.</summary>
    public static ScheduleChangesJson? Of(ScheduleProblemRequest request, ScheduleMapping mapping, IReadOnlyList<ScheduledJob> jobs)
    {
        if (mapping.Problem.Previous is not { } previous)
            return null;
        var first = jobs.GroupBy(job => job.JobId, StringComparer.Ordinal).ToDictionary(parts => parts.Key, parts => parts.MinBy(part => part.FirstStep)!, StringComparer.Ordinal);
        var pairs = previous.Places.Where(place => first.ContainsKey(place.JobId)).Select(place => (Then: place, Now: first[place.JobId])).ToList();
        return new()
        {
            JobsCompared = pairs.Count,
            HoursMoved = Hours(pairs.Sum(pair => Math.Abs(pair.Now.Start - pair.Then.Start))),
            SawChanges = pairs.Count(ChangesSaw),
            ReversedPairs = pairs.Where(pair => !ChangesSaw(pair)).GroupBy(pair => pair.Then.SawId, StringComparer.Ordinal).Sum(Reversed),
            PromisesNewlyBroken = NewlyBroken(request, mapping, jobs),
            Moved =
            [
                .. pairs.Where(pair => ChangesSaw(pair) || pair.Now.Start != pair.Then.Start).Select(pair => new MovedJobJson
                {
                    JobId = pair.Then.JobId,
                    PreviousSawId = pair.Then.SawId,
                    SawId = pair.Now.SawId,
                    HoursMoved = Hours(pair.Now.Start - pair.Then.Start),
                }),
            ],
        };
    }

    private static bool ChangesSaw((PreviousPlace Then, ScheduledJob Now) pair) => !string.Equals(pair.Then.SawId, pair.Now.SawId, StringComparison.Ordinal);

    private static int Reversed(IEnumerable<(PreviousPlace Then, ScheduledJob Now)> onSaw)
    {
        var (starts, reversed) = (onSaw.OrderBy(pair => pair.Then.Start).ThenBy(pair => pair.Now.Start).Select(pair => pair.Now.Start).ToList(), 0);
        for (var i = 0; i < starts.Count; i++)
            reversed += starts.Take(i).Count(earlier => earlier > starts[i]);
        return reversed;
    }

    private static List<string> NewlyBroken(ScheduleProblemRequest request, ScheduleMapping mapping, IReadOnlyList<ScheduledJob> jobs)
    {
        var finishes = jobs.GroupBy(job => job.JobId, StringComparer.Ordinal).ToDictionary(parts => parts.Key, parts => parts.Max(part => part.Finish), StringComparer.Ordinal);
        var dues = request.Jobs.Where(job => job.Due is not null).ToDictionary(job => job.JobId, job => job.Due!.Value, StringComparer.Ordinal);
        return
        [
            .. request.Previous!.Jobs.Where(then => dues.TryGetValue(then.JobId, out var due) && then.Finish <= due
                    && finishes.TryGetValue(then.JobId, out var now) && now > mapping.Clock.SecondsBefore(due))
                .Select(then => then.JobId).Order(StringComparer.Ordinal),
        ];
    }

    private static decimal Hours(long seconds) => decimal.Round(seconds / (decimal)ScheduleCost.SecondsPerHour, HourDecimals, MidpointRounding.ToEven);
}
