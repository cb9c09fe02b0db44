package io.github.bedjoint.drawing;

import io.github.bedjoint.drawing.Svg.Dot;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.survey.Follow;
import io.github.bedjoint.texture.JointSection;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Joints in section with the film over them; below, bars of the stretch asked for against a line at what the film bears. */
final class JointSketch {
    private static final double WIDTH = 348;
    private static final double SIZE = 12;
    private static final double FACE = 34;
    private static final double UNIT = 62;
    private static final double DEPTH_ROOM = 90;
    private static final double ROW = 33;

    private final Surface surface;
    private final Film film;
    private final TakeUp takeUp;
    private final UnitStyle style;
    private final Follow.Outcome outcome;
    private final List<JointSection> sections;

    JointSketch(Surface surface, Film film, TakeUp takeUp, UnitStyle style) {
        this.surface = surface;
        this.film = film;
        this.takeUp = takeUp;
        this.style = style;
        this.outcome = Follow.of(surface, film, takeUp).outcome();
        this.sections = sections(surface);
    }

    private static List<JointSection> sections(Surface surface) {
        if (!(surface instanceof MasonrySurface masonry)) {
            return List.of();
        }
        JointSection bed = masonry.bedSection();
        JointSection head = masonry.headSection();
        return bed.equals(head) ? List.of(bed) : List.of(bed, head);
    }

    Drawing drawing() {
        double[] tops = new double[sections.size() + 1];
        for (int i = 0; i < sections.size(); i++) {
            tops[i + 1] = tops[i] + height(sections.get(i));
        }
        double bars = tops[sections.size()];
        Legend legend = sections.isEmpty() ? new Legend() : new Legend().with(JointSketch::filmMark, how());
        double height = bars + legend.height() + 20 + 3 * ROW + 24;
        return new Drawing("Does the film follow?", description(), WIDTH, height, svg -> {
            for (int i = 0; i < sections.size(); i++) {
                section(svg, sections.get(i), tops[i], name(i));
            }
            legend.draw(svg, 0, bars, WIDTH);
            stretches(svg, bars + legend.height() + 6);
        });
    }

    private String name(int i) {
        return sections.size() == 1 ? "Joint" : i == 0 ? "Bed joint" : "Head joint";
    }

    private static double scale(JointSection section) {
        double across = (WIDTH - 2 * UNIT) / section.widthM();
        return section.depthM() == 0 ? across : Math.min(across, DEPTH_ROOM / section.depthM());
    }

    private static double height(JointSection section) {
        return FACE + section.depthM() * scale(section) + 60;
    }

    private void section(Svg svg, JointSection section, double y, String name) {
        double scale = scale(section);
        double joint = section.widthM() * scale;
        double left = (WIDTH - joint) / 2;
        double face = y + FACE + 4;
        double deep = face + section.depthM() * scale + 18;
        svg.text(0, y + 13, SIZE, "start", Svg.within(name + ": " + section.profile().describe(style), SIZE, WIDTH), Look.BOLD);
        svg.text(0, y + 28, 11, "start", "weather side above, both scales alike");
        unit(svg, 1, face, left - 1, deep - face);
        unit(svg, left + joint, face, WIDTH - left - joint - 1, deep - face);
        List<Dot> line = section.line().stream().map(t -> new Dot(left + t.acrossM() * scale, face + t.depthM() * scale)).toList();
        List<Dot> mortar = new ArrayList<>(line);
        mortar.add(new Dot(left + joint, deep));
        mortar.add(new Dot(left, deep));
        svg.polygon(mortar, "fill", Look.GREY, "stroke", Look.INK, "stroke-width", "0.8");
        film(svg, line, face);
        svg.dimension(left, deep + 8, left + joint, deep + 8);
        String words = length(section.widthM()) + " wide, film along it " + length(section.lengthM());
        svg.text(WIDTH / 2, deep + 23, SIZE, "middle", Svg.within(words, SIZE, WIDTH));
    }

    private static void unit(Svg svg, double x, double y, double width, double height) {
        svg.rect(x, y, width, height, "fill", Look.MASONRY, "stroke", Look.INK, "stroke-width", "0.8");
        svg.hatch(Hatch.RISING, x, y, width, height);
    }

    /** The film on the faces, and in the joint as far as it goes. */
    private void film(Svg svg, List<Dot> joint, double face) {
        Dot first = joint.get(0);
        Dot last = joint.get(joint.size() - 1);
        String[] solid = {"stroke", Look.FILM_DARK, "stroke-width", "4", "stroke-linejoin", "round"};
        String[] dashed = {"stroke", Look.FILM_DARK, "stroke-width", "4", "stroke-dasharray", "7 4"};
        svg.polyline(List.of(new Dot(1, face), first), solid);
        svg.polyline(List.of(last, new Dot(WIDTH - 1, face)), solid);
        switch (outcome) {
            case FITS -> svg.polyline(joint, solid);
            case TIGHT -> svg.polyline(joint, dashed);
            case BRIDGES -> svg.polyline(List.of(first, last), solid);
        }
    }

    private static void filmMark(Svg svg, double x, double y) {
        svg.line(x, y + 6, x + 26, y + 6, "stroke", Look.FILM_DARK, "stroke-width", "4");
    }

    private String how() {
        return switch (outcome) {
            case FITS -> "film: follows the joint";
            case TIGHT -> "film: dashed where it must slide";
            case BRIDGES -> "film: bridges the joint";
        };
    }

    private void stretches(Svg svg, double y) {
        double most = Math.max(Math.max(takeUp.leftLocal(surface), film.usableStretch()), Math.max(takeUp.leftUp(surface), takeUp.leftAlong(surface)));
        double scale = most == 0 ? 0 : (WIDTH - 4) / (most * 1.02);
        svg.text(0, y + 10, SIZE, "start", "Stretch, as a share of length", Look.BOLD);
        bar(svg, y + 14, "asked at the steepest place", takeUp.leftLocal(surface), scale);
        bar(svg, y + 14 + ROW, "asked on the mean, up the wall", takeUp.leftUp(surface), scale);
        bar(svg, y + 14 + 2 * ROW, "asked on the mean, along it", takeUp.leftAlong(surface), scale);
        double x = 1 + film.usableStretch() * scale;
        // A mark beside each bar rather than one line through all three: it would cross the words between them.
        for (int row = 0; row < 3; row++) {
            svg.line(x, y + 29 + row * ROW, x, y + 44 + row * ROW, "stroke", Look.INK, "stroke-width", "2.5");
        }
        String words = "the film bears " + percent(film.usableStretch());
        double half = Svg.width(words, SIZE) / 2;
        svg.text(Math.min(WIDTH - half, Math.max(half, x)), y + 29 + 3 * ROW, SIZE, "middle", words, Look.BOLD);
    }

    private static void bar(Svg svg, double y, String words, double share, double scale) {
        svg.text(0, y + 13, SIZE, "start", words + ": " + percent(share));
        double width = Math.max(1, share * scale);
        svg.rect(1, y + 17, width, 11, "fill", Look.PAPER, "stroke", Look.INK, "stroke-width", "0.8");
        svg.hatch(Hatch.RISING, 1, y + 17, width, 11);
    }

    private String length(double metres) {
        return style == UnitStyle.METRIC ? Print.fixed(metres * 1000, 1) + " mm" : Print.fixed(metres / 0.0254, 3) + " in";
    }

    private static String percent(double share) {
        return Print.fixed(100 * share, 1) + " %";
    }

    private String description() {
        List<String> all = new ArrayList<>();
        sections.forEach(section -> all.add("A joint " + section.profile().describe(style) + ", " + length(section.widthM())
                + " wide; the film along it is " + length(section.lengthM()) + " long."));
        all.add("Asked for: " + percent(takeUp.leftLocal(surface)) + " at the steepest place, " + percent(takeUp.leftUp(surface)) + " on the mean up the wall, "
                + percent(takeUp.leftAlong(surface)) + " along it. The film bears " + percent(film.usableStretch()) + ".");
        all.add(answer(sections.isEmpty() ? null : how()));
        return Drawing.list(all);
    }

    private String answer(@Nullable String how) {
        return how == null ? "It fits: " + WallSketch.words(outcome) + "." : how.substring(0, 1).toUpperCase(Locale.ROOT) + how.substring(1) + ".";
    }
}
