namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A request that works; a test posts it. J2 was moved before J1 by hand, so that all are timed anew; J3 is left out.</summary>
internal static class ScheduleEvaluationExample
{
    public const string Json = """
        {
          "currency": "EUR",
          "timeZone": "Europe/Vienna",
          "planStart": "2026-11-30T06:00:00+01:00",
          "jobs": [
            {"jobId": "J1", "due": "2026-11-30T12:00:00+01:00", "costPerHourLate": 40, "options": [{"sawId": "saw-1", "seconds": 5400, "steps": 24, "section": "Round 50", "gradeGroup": "carbon steel"}]},
            {"jobId": "J2", "options": [{"sawId": "saw-1", "seconds": 9300, "steps": 12, "section": "IPE 200", "gradeGroup": "carbon steel"}]},
            {"jobId": "J3", "options": [{"sawId": "saw-1", "seconds": 1800, "steps": 6, "section": "Round 80", "gradeGroup": "stainless steel"}]}
          ],
          "shop": {
            "saws": [
              {
                "sawId": "saw-1",
                "capacity": {"round": 410, "width": 460, "height": 410},
                "tail": 120,
                "initialSection": "Round 50",
                "initialGradeGroup": "carbon steel",
                "calendarId": "early",
                "machineCostPerHour": 48
              }
            ],
            "calendars": [
              {"calendarId": "early", "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00", "breaks": [{"start": "09:00", "end": "09:30"}]}]}
            ],
            "rates": {"laborCostPerHour": 42}
          },
          "previous": {
            "jobs": [
              {"jobId": "J1", "sawId": "saw-1", "start": "2026-11-30T06:00:00+01:00", "finish": "2026-11-30T07:30:00+01:00"},
              {"jobId": "J2", "sawId": "saw-1", "start": "2026-11-30T07:40:00+01:00", "finish": "2026-11-30T10:45:00+01:00"}
            ],
            "costPerHourMoved": 2,
            "costPerSawChange": 5
          },
          "schedule": {"jobs": [{"jobId": "J2", "sawId": "saw-1", "sequence": 1}, {"jobId": "J1", "sawId": "saw-1", "sequence": 2}]},
          "compare": true
        }
        """;
}
