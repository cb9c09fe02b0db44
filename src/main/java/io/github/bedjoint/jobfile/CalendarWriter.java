package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.LeadTime;
import io.github.bedjoint.schedule.WorkCalendar;
import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Optional;

/** Writes working hours, closed days, the start and the waits. */
final class CalendarWriter {
    private final JsonOut out;

    CalendarWriter(JsonOut out) {
        this.out = out;
    }

    /** All days have the hours of the first that has any; where they differ, reading back tells. */
    void write(JobDates dates) throws IOException {
        WorkCalendar calendar = dates.calendar();
        Optional<DayOfWeek> first = Arrays.stream(DayOfWeek.values()).filter(day -> calendar.opens(day).isPresent()).findFirst();
        out.field("zone", calendar.zone().getId());
        out.field("start", dates.start().toLocalDate().toString());
        out.field("from", first.flatMap(calendar::opens).orElse(LocalTime.of(8, 0)).toString());
        out.field("to", first.flatMap(calendar::closes).orElse(LocalTime.of(16, 0)).toString());
        out.array("days", () -> {
            for (DayOfWeek day : DayOfWeek.values()) {
                if (calendar.opens(day).isPresent()) {
                    out.text(Fields.word(day));
                }
            }
        });
        if (!calendar.closed().isEmpty()) {
            out.array("closed", () -> {
                for (LocalDate date : calendar.closed()) {
                    out.text(date.toString());
                }
            });
        }
        out.sized("washBefore", dates.waits().washBefore().seconds(), "s");
        out.object("wipe", () -> {
            out.sized("atLeast", dates.waits().wipeAtLeast().seconds(), "s");
            out.sized("atMost", dates.waits().wipeAtMost().seconds(), "s");
        });
        if (dates.people() > 0) {
            out.count("people", dates.people());
        }
        rain(dates);
        if (!dates.leadTimes().isEmpty()) {
            out.array("leadTimes", () -> {
                for (LeadTime lead : dates.leadTimes()) {
                    out.item(() -> {
                        out.field("title", lead.title());
                        out.sized("takes", lead.takes().seconds(), "s");
                        out.word("before", lead.before());
                    });
                }
            });
        }
        out.sized("acclimatise", dates.waits().acclimatise().seconds(), "s");
        out.sized("cure", dates.waits().cure().seconds(), "s");
    }

    private void rain(JobDates dates) throws IOException {
        if (!dates.rain().days().isEmpty()) {
            out.array("rain", () -> {
                for (LocalDate day : dates.rain().days()) {
                    out.text(day.toString());
                }
            });
        }
        out.sized("dryAfterRain", dates.rain().drying().seconds(), "s");
    }
}
