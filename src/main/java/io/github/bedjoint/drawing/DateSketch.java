package io.github.bedjoint.drawing;

import io.github.bedjoint.schedule.Link;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.TimeBase;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A row for each activity over the days of the job; closed days are grey, waits hatched, float a broken line. */
final class DateSketch {
    static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ROOT);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ROOT);
    private static final double WIDTH = 660;
    private static final double NAMES = 172;
    private static final double HEAD = 34;
    private static final double ROW = 30;
    private static final double SIZE = 12;
    private static final double SHORTEST = 3;

    private final Timetable dates;
    private final WorkCalendar calendar;
    private final LocalDate first;
    private final int days;
    private final double perDay;

    DateSketch(Timetable dates) {
        this.dates = dates;
        this.calendar = dates.network().calendar();
        this.first = local(dates.network().begin()).toLocalDate();
        this.days = (int) ChronoUnit.DAYS.between(first, local(dates.handOver()).toLocalDate()) + 1;
        this.perDay = (WIDTH - NAMES - 4) / days;
    }

    private ZonedDateTime local(ZonedDateTime moment) {
        return moment.withZoneSameInstant(calendar.zone());
    }

    private double x(ZonedDateTime moment) {
        ZonedDateTime at = local(moment);
        double day = ChronoUnit.DAYS.between(first, at.toLocalDate()) + at.toLocalTime().toSecondOfDay() / 86_400.0;
        return NAMES + Math.min(days, day) * perDay;
    }

    Drawing drawing() {
        double rows = HEAD + dates.slots().size() * ROW;
        Legend legend = legend();
        return new Drawing("Days of the job", description(), WIDTH, rows + 28 + legend.height(), svg -> {
            days(svg, rows);
            for (int i = 0; i < dates.slots().size(); i++) {
                row(svg, dates.slots().get(i), HEAD + i * ROW);
            }
            handOver(svg, rows);
            legend.draw(svg, 0, rows + 26, WIDTH);
        });
    }

    private void days(Svg svg, double bottom) {
        int each = (int) Math.ceil(46 / perDay);
        for (int i = 0; i < days; i++) {
            LocalDate day = first.plusDays(i);
            double x = NAMES + i * perDay;
            ZonedDateTime begin = day.atStartOfDay(calendar.zone());
            if (calendar.shiftBetween(begin, day.plusDays(1).atStartOfDay(calendar.zone())).isZero()) {
                svg.rect(x, HEAD, perDay, bottom - HEAD, "fill", Look.GREY);
            }
            if (i % each == 0) {
                svg.line(x, HEAD - 4, x, bottom, "stroke", Look.INK, "stroke-width", "0.4");
                if (x + 2 + Svg.width("30 Apr", 11) <= WIDTH) {
                    svg.text(x + 2, 13, 11, "start", WEEKDAY.format(day));
                    svg.text(x + 2, 26, 11, "start", DAY.format(day));
                }
            }
        }
        svg.line(NAMES, HEAD, NAMES + days * perDay, HEAD, Look.THIN);
    }

    private void row(Svg svg, Slot slot, double y) {
        String[] weight = slot.isCritical() ? Look.BOLD : new String[0];
        svg.text(0, y + 18, SIZE, "start", Svg.within(slot.activity().title(), SIZE, NAMES - 6), weight);
        svg.line(0, y + ROW, NAMES + days * perDay, y + ROW, "stroke", Look.INK, "stroke-width", "0.3");
        waits(svg, slot, y);
        double from = x(slot.earlyStart());
        double to = Math.max(from + SHORTEST, x(slot.earlyEnd()));
        if (!slot.isCritical()) {
            svg.line(to, y + 25, Math.max(to, x(slot.lateEnd())), y + 25, "stroke", Look.INK, "stroke-width", "1.5", "stroke-dasharray", "3 2");
        }
        boolean wait = slot.activity().duration().base() == TimeBase.ELAPSED;
        svg.rect(from, y + 6, to - from, 15, "fill", wait ? Look.PAPER : Look.FILM_DARK, "stroke", Look.INK, "stroke-width", "1");
        if (wait) {
            svg.hatch(Hatch.RISING, from, y + 6, to - from, 15);
        }
    }

    /** The least times that others keep after this one, with how long they are where there is room. */
    private void waits(Svg svg, Slot slot, double y) {
        for (Link link : dates.network().links()) {
            if (link.from().equals(slot.activity().id()) && link.atLeast().seconds() > 0) {
                double from = x(slot.earlyEnd());
                double to = x(calendar.after(slot.earlyEnd(), link.atLeast()));
                svg.rect(from, y + 9, to - from, 9, Look.BLANK);
                svg.hatch(Hatch.RISING, from, y + 9, to - from, 9);
                String words = "wait " + Measure.TIME.print(link.atLeast().seconds(), UnitStyle.METRIC);
                if (to + 6 + Svg.width(words, 11) < WIDTH) {
                    svg.rect(to + 3, y + 7, Svg.width(words, 11), 13, "fill", Look.PAPER);
                    svg.text(to + 5, y + 18, 11, "start", words);
                }
            }
        }
    }

    private void handOver(Svg svg, double bottom) {
        double x = x(dates.handOver());
        svg.line(x, HEAD - 4, x, bottom + 6, "stroke", Look.INK, "stroke-width", "2.5");
        svg.text(Math.min(WIDTH - 2, x + 2), bottom + 19, SIZE, "end", "hand-over " + MOMENT.format(local(dates.handOver())), Look.BOLD);
    }

    private Legend legend() {
        return new Legend()
                .with((svg, x, y) -> svg.rect(x, y, 26, 12, "fill", Look.FILM_DARK), "work, nights in between")
                .with((svg, x, y) -> {
                    svg.rect(x, y, 26, 12, Look.BLANK);
                    svg.hatch(Hatch.RISING, x, y, 26, 12);
                }, "wait, at least so long")
                .with((svg, x, y) -> svg.line(x, y + 8, x + 26, y + 8, "stroke", Look.INK, "stroke-width", "1.5", "stroke-dasharray", "3 2"),
                        "may end so much later")
                .with((svg, x, y) -> svg.rect(x, y, 26, 12, "fill", Look.GREY), "no working hours")
                .with((svg, x, y) -> svg.text(x + 13, y + 10, SIZE, "middle", "Aa", Look.BOLD), "bold: a delay delays the hand-over");
    }

    private String description() {
        List<String> all = new ArrayList<>();
        for (Slot slot : dates.slots()) {
            all.add(slot.activity().title() + " from " + MOMENT.format(local(slot.earlyStart())) + " to " + MOMENT.format(local(slot.earlyEnd()))
                    + (slot.isCritical() ? ", without float." : "."));
        }
        all.add("Hand-over " + MOMENT.format(local(dates.handOver())) + ".");
        return Drawing.list(all);
    }
}
