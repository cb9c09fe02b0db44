package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.JobWaits;
import io.github.bedjoint.job.LeadTime;
import io.github.bedjoint.schedule.Rain;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Reads working hours, closed days, the start and the waits. */
final class CalendarReader {
    private static final Set<DayOfWeek> WEEK = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private CalendarReader() {}

    static JobDates dates(Fields f) {
        ZoneId zone = time(f, "zone", ZoneId::of, "a time zone such as Europe/Vienna");
        LocalTime from = time(f, "from", LocalTime::parse, "a time such as 08:00");
        LocalTime to = time(f, "to", LocalTime::parse, "a time such as 16:30");
        Set<DayOfWeek> days = f.has("days") ? EnumSet.noneOf(DayOfWeek.class) : WEEK;
        if (f.has("days")) {
            days.addAll(f.words("days", DayOfWeek.class));
        }
        WorkCalendar calendar = WorkCalendar.weekdays(zone);
        for (DayOfWeek day : DayOfWeek.values()) {
            WorkCalendar before = calendar;
            calendar = days.contains(day)
                    ? Fields.under(f.get("to"), () -> before.withHours(day, from, to))
                    : calendar.without(day);
        }
        if (f.has("closed")) {
            calendar = calendar.withClosed(f.list("closed", CalendarReader::date).toArray(LocalDate[]::new));
        }
        LocalDate start = time(f, "start", LocalDate::parse, "a date such as 2027-04-12");
        JobDates dates = JobDates.of(calendar, start.atStartOfDay(zone));
        dates = f.with(dates, "washBefore", n -> f.read(n, Read::time), (d, wait) -> d.withWashBefore(Span.elapsed(wait)));
        dates = f.with(dates, "people", f::count, (d, people) -> d.withPeople(Door.count("people", people, 1, 50)));
        dates = dates.withRain(rain(f));
        if (f.has("leadTimes")) {
            dates = dates.withLeadTimes(f.list("leadTimes", node -> Fields.whole(node, CalendarReader::leadTime)));
        }
        if (f.has("wipe")) {
            JobWaits usual = dates.waits();
            JobWaits window = f.object("wipe", w -> wipe(w, usual));
            dates = dates.withWaits(before -> window);
        }
        dates = f.with(dates, "acclimatise", n -> f.read(n, Read::time), (d, wait) -> d.withWaits(w -> w.withAcclimatise(Span.elapsed(wait))));
        return f.with(dates, "cure", n -> f.read(n, Read::time), (d, wait) -> d.withCure(Span.elapsed(wait)));
    }

    private static Rain rain(Fields f) {
        Rain rain = f.with(Rain.none(), "dryAfterRain", n -> f.read(n, Read::time), (r, wait) -> r.dryingFor(Span.elapsed(wait)));
        for (LocalDate day : f.has("rain") ? f.list("rain", CalendarReader::date) : List.<LocalDate>of()) {
            rain = rain.on(day);
        }
        return rain;
    }

    private static LeadTime leadTime(Fields f) {
        LeadTime.Before before = f.word("before", LeadTime.Before.class);
        f.get("takes");
        LeadTime none = new LeadTime(f.read("title", text -> Door.text("title", text)), Span.NONE, before);
        return f.with(none, "takes", n -> f.read(n, Read::time), (lead, time) -> new LeadTime(lead.title(), Span.elapsed(time), before));
    }

    private static JobWaits wipe(Fields f, JobWaits usual) {
        JobWaits waits = f.with(usual, "atLeast", n -> f.read(n, Read::time), (w, least) -> w.withWipe(Span.elapsed(least), w.wipeAtMost()));
        return f.with(waits, "atMost", n -> f.read(n, Read::time), (w, most) -> w.withWipe(w.wipeAtLeast(), Span.elapsed(most)));
    }

    private static <T> T time(Fields f, String name, Function<String, T> parser, String what) {
        return time(f.get(name), f.text(name), parser, what);
    }

    private static <T> T time(JsonNode node, String text, Function<String, T> parser, String what) {
        try {
            return parser.apply(text);
        } catch (DateTimeException e) {
            throw node.refused("must be " + what, "Maybe the digits are in another order.");
        }
    }

    static LocalDate date(JsonNode node) {
        return time(node, node.scalar() instanceof String text ? text : "", LocalDate::parse, "a date such as 2027-04-12");
    }
}
