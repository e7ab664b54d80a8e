namespace SawEngine.Api.Features.Schedules;

/// <summary>A request for a schedule that works at the first click.</summary>
internal static class ScheduleExample
{
    public const string Json = """
        {
          "currency": "EUR",
          "timeZone": "Europe/Vienna",
          "planStart": "2026-11-30T06:00:00+01:00",
          "jobs": [
            {
              "jobId": "J1",
              "due": "2026-11-30T12:00:00+01:00",
              "costPerHourLate": 40,
              "options": [
                {"sawId": "saw-1", "seconds": 5400, "steps": 24, "loads": 2, "loadSeconds": 240, "section": "Round 50", "gradeGroup": "carbon steel", "bladeId": "34x1.1-4/6", "bladeLifeShare": 0.02, "grade": "C45"},
                {"sawId": "saw-2", "seconds": 6900, "steps": 24, "loads": 2, "loadSeconds": 180, "section": "Round 50", "gradeGroup": "carbon steel", "bladeLifeShare": 0.02, "grade": "C45", "mayRunUnattended": true}
              ],
              "attributes": {"orderId": "SO-1001"}
            },
            {
              "jobId": "J2",
              "due": "2026-12-01T10:00:00+01:00",
              "costPerHourLate": 25,
              "options": [
                {"sawId": "saw-1", "seconds": 9300, "steps": 12, "loads": 3, "loadSeconds": 300, "craneLoads": true, "section": "IPE 200", "gradeGroup": "carbon steel", "bladeId": "34x1.1-5/8", "bladeLifeShare": 0.05}
              ]
            },
            {
              "jobId": "J3",
              "release": "2026-11-30T09:00:00+01:00",
              "after": ["J1"],
              "options": [{"sawId": "saw-2", "seconds": 1800.5, "section": "Round 80", "gradeGroup": "stainless steel"}]
            },
            {
              "jobId": "J4",
              "frozen": {"sawId": "saw-1", "start": "2026-11-30T05:40:00+01:00"},
              "options": [{"sawId": "saw-1", "seconds": 1500, "steps": 5, "section": "IPE 200", "gradeGroup": "carbon steel", "bladeId": "34x1.1-5/8", "bladeLifeShare": 0.01}]
            },
            {
              "jobId": "J5",
              "mostParts": 2,
              "due": "2026-12-01T12:00:00+01:00",
              "costPerHourLate": 15,
              "options": [
                {"sawId": "saw-1", "seconds": 21600, "steps": 72, "section": "Round 50", "gradeGroup": "carbon steel", "grade": "C45"},
                {"sawId": "saw-2", "seconds": 25200, "steps": 72, "section": "Round 50", "gradeGroup": "carbon steel", "grade": "C45", "mayRunUnattended": true}
              ]
            }
          ],
          "shop": {
            "saws": [
              {
                "sawId": "saw-1",
                "capacity": {"round": 410, "width": 460, "height": 410},
                "tail": 120,
                "bladeIds": ["34x1.1-4/6", "34x1.1-5/8"],
                "mountedBladeId": "34x1.1-5/8",
                "shelf": [{"bladeId": "34x1.1-4/6", "remainingLife": 0.4}],
                "initialSection": "IPE 200",
                "initialGradeGroup": "carbon steel",
                "calendarId": "early",
                "maintenance": [{"firstDay": "2026-12-04", "start": "13:00", "minutes": 60, "recurrence": ["RRULE:FREQ=WEEKLY;BYDAY=FR"], "reason": "guides and coolant"}],
                "machineCostPerHour": 48,
                "setUpChanges": [{"kind": "section", "from": "IPE 200", "to": "Round 50", "seconds": 420}],
                "setUpBeside": ["gradeGroup"]
              },
              {
                "sawId": "saw-2",
                "capacity": {"round": 260, "width": 280, "height": 260},
                "tail": 80,
                "initialSection": "Round 50",
                "initialGradeGroup": "carbon steel",
                "calendarId": "early",
                "unattended": {"bars": 2, "cuts": 60, "hours": 10},
                "machineCostPerHour": 36
              }
            ],
            "blades": [
              {"bladeId": "34x1.1-4/6", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [4, 6], "cost": 95},
              {"bladeId": "34x1.1-5/8", "width": 34, "thickness": 1.1, "kerf": 1.6, "teethPerInch": [5, 8], "cost": 95, "remainingLife": 0.7}
            ],
            "calendars": [
              {
                "calendarId": "early",
                "shifts": [{"days": ["MO", "TU", "WE", "TH", "FR"], "start": "06:00", "end": "14:00", "breaks": [{"start": "09:00", "end": "09:30"}]}],
                "recurringShifts": [{"firstDay": "2026-12-04", "start": "14:00", "minutes": 120, "recurrence": ["RRULE:FREQ=WEEKLY;INTERVAL=2;BYDAY=FR"]}],
                "overtime": [{"days": ["SA"], "start": "06:00", "end": "12:00", "costPerHour": 22}],
                "recurringHolidays": [{"firstDay": "2025-12-25", "recurrence": ["RRULE:FREQ=YEARLY"]}],
                "closures": [{"firstDay": "2026-12-28", "lastDay": "2027-01-06", "reason": "year's end"}]
              }
            ],
            "operators": [{"operatorId": "ann", "calendarId": "early"}],
            "cranes": [{"craneId": "north", "sawIds": ["saw-1"]}],
            "walkingSeconds": 20,
            "rates": {"laborCostPerHour": 42}
          },
          "weights": {"overtime": 1.2},
          "previous": {
            "jobs": [
              {"jobId": "J4", "sawId": "saw-1", "start": "2026-11-30T05:40:00+01:00", "finish": "2026-11-30T06:05:00+01:00"},
              {"jobId": "J2", "sawId": "saw-1", "start": "2026-11-30T06:10:00+01:00", "finish": "2026-11-30T09:35:00+01:00"}
            ]
          },
          "effort": "standard"
        }
        """;
}
